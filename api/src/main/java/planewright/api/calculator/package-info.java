/**
 * What a plugin implements. A {@link planewright.api.calculator.Calculator} is one class with two records: what it is
 * given and what it answers. From their annotations the program derives the form, the command line, JSON in and out,
 * validation, the results page, what the journal keeps and the printed sheet.
 *
 * <p>A component of an <b>inputs</b> record is a {@code Measured<Q>}, {@code String}, {@code boolean}, {@code int}, an
 * enum, a {@code java.time.LocalDateTime} by the builder's clock (typed {@code 2025-03-14 20:15}, or {@code now}), a
 * {@link planewright.api.journal.Planform}, an {@code Optional} of one of these, or a {@code List} of a record whose
 * components are such values. A stretch of time is a {@code Measured<Time>}. A component of a <b>results</b> record is one of the same, or a {@link
 * planewright.api.figure.Chart}, a {@link planewright.api.figure.Drawing}, a {@code List} of {@link
 * planewright.api.calculator.Finding} or of {@link planewright.api.calculator.Proposal}.
 */
package planewright.api.calculator;
