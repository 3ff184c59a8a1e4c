/**
 * What materials of the bench weigh, hold and need to cure, by class, each figure with its source.
 *
 * <p>The table is {@code materials.tsv} beside this package: tab-separated UTF-8 that any spreadsheet opens, so that plugins
 * need no JSON library for it. Low, typical and high are a range, not a standard deviation. The column {@code known} says how
 * a figure is known, for low/typical/high apart where they differ: <i>read</i> in the source named, from <i>memory</i> without
 * looking it up, <i>common practice</i> without a source, or <i>chosen</i> for want of any. The figures are defaults; what a
 * builder has measured is better. Units are UCUM codes; conditions are 20-25 °C and about 50 % relative humidity unless a
 * row says otherwise. Names are classes as in the trade, never brands.
 */
package planewright.shared.material;
