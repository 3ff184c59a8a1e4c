/**
 * How long glue and filler need: from figures of the table of materials, the shop's temperatures and the thickness to clock
 * times. Hours and kelvins inside.
 */
package planewright.cure;
