package org.battenbook.check;

import java.util.Optional;
import java.util.regex.Pattern;
import org.battenbook.bind.Spot;
import org.battenbook.book.Column;
import org.battenbook.source.Span;
import org.battenbook.unit.Shown;
import org.battenbook.value.Value;

/**
 * Shows values. A number that a person wrote is shown as written, in its own unit. Calculated
 * values are shown in the form of their place.
 */
final class AsWritten {
  /** The start of a tolerance; a number has none of these characters elsewhere. */
  private static final Pattern TOLERANCE = Pattern.compile("±|\\+/[-−]");

  private AsWritten() {}

  static Shown show(Decisions decided, Spot spot, Value value) {
    boolean own = value instanceof Value.Amount && spot.place().shownAs() == null;
    Optional<Span> written = own ? literal(decided, spot) : Optional.empty();
    return written
        .map(span -> new Shown(TOLERANCE.split(span.text(), 2)[0].strip(), false))
        .orElseGet(() -> decided.book().showCalculated(spot.place(), value));
  }

  /** Where a value is written as a literal, in a cell or as the whole formula of a place. */
  private static Optional<Span> literal(Decisions decided, Spot spot) {
    if (decided.ownFormula(spot) != null) {
      return Optional.empty();
    }
    if (decided.written(spot) != null) {
      return cell(decided, spot);
    }
    CheckedFormula formula = decided.formula(spot);
    return formula != null && formula.literal().isPresent()
        ? Optional.of(formula.expression().span())
        : Optional.empty();
  }

  /** Where the cell of a spot is written, in an edit or in the file; empty for a line. */
  static Optional<Span> cell(Decisions decided, Spot spot) {
    if (!(spot.place() instanceof Column column)) {
      return Optional.empty();
    }
    Span typed = decided.cells(column).typed(spot.row());
    return typed == null
        ? decided.rows(column.table()).cell(column, spot.row())
        : Optional.of(typed);
  }
}
