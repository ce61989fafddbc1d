package org.battenbook.check;

import java.util.Optional;
import java.util.regex.Pattern;
import org.battenbook.bind.Spot;
import org.battenbook.book.Column;
import org.battenbook.source.Span;
import org.battenbook.unit.Shown;
import org.battenbook.value.Value;

/** Shows values: what a person wrote as a number stays in their own words and unit. */
final class AsWritten {
  /** In what is a number, this can only begin its tolerance. */
  private static final Pattern TOLERANCE = Pattern.compile("±|\\+/[-−]");

  private AsWritten() {}

  static Shown show(Decisions decided, Spot spot, Value value) {
    boolean own = value instanceof Value.Amount && spot.place().shownAs() == null;
    Optional<Span> written = own ? literal(decided, spot) : Optional.empty();
    return written
        .map(span -> new Shown(TOLERANCE.split(span.text(), 2)[0].strip(), false))
        .orElseGet(() -> decided.book().showReckoned(spot.place(), value));
  }

  /** Where the value stands as a plain number, in a cell or as a line's whole formula. */
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

  /** Where a row's cell stands: in an edit, or else in the text; nowhere for a line. */
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
