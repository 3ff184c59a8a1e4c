/**
 * What a plugin implements. A {@link planewright.api.calculator.Calculator} is one class with two records: what it is
 * given and what it answers. From their annotations the program derives the form, the command line, JSON in and out,
 * validation, the results page, what the journal keeps and the printed sheet.
 *
 * <p>A component of an <b>inputs</b> record is one of these, an {@code Optional} of one, or a {@code List} of a record whose
 * components are such values:
 *
 * <ul>
 *   <li>{@code Measured<Q>}, a quantity; a stretch of time is a {@code Measured<Time>}
 *   <li>{@code String}, {@code boolean}, {@code int}, an enum
 *   <li>{@code java.time.LocalDateTime} by the builder's clock, typed {@code 2025-03-14 20:15}, or {@code now}
 *   <li>{@link planewright.api.figure.Outline}, typed as the name of an outline template, or an SVG file
 *   <li>{@link planewright.api.journal.Planform}, {@link planewright.api.journal.BenchCalendar}
 *   <li>{@link planewright.api.journal.Picture}, one that the journal keeps, typed as its caption or its hash
 * </ul>
 *
 * <p>A component of a <b>results</b> record is one of the same, or a {@link planewright.api.figure.Chart}, a {@link
 * planewright.api.figure.Drawing}, a {@code List} of {@link planewright.api.calculator.Finding} or of {@link
 * planewright.api.calculator.Proposal}.
 */
package planewright.api.calculator;
