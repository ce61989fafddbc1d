package org.battenbook.check;

import java.util.Optional;
import java.util.regex.Pattern;
import org.battenbook.bind.Spot;
import org.battenbook.book.Column;
import org.battenbook.source.Span;
import org.battenbook.unit.Shown;
import org.battenbook.value.ShownValue;
import org.battenbook.value.Value;

/** Shows values: what a person wrote as a number stays in their own words and unit. */
final class AsWritten {
  /** In what is a number, this can only begin its tolerance. */
  private static final Pattern TOLERANCE = Pattern.compile("±|\\+/[-−]");

  private AsWritten() {}

  static Shown show(CheckedPlace checked, Spot spot, Value value) {
    boolean own = value instanceof Value.Amount && checked.place().shownAs() == null;
    Optional<Span> written = own ? literal(checked, spot) : Optional.empty();
    return written
        .map(span -> new Shown(TOLERANCE.split(span.text(), 2)[0].strip(), false))
        .orElseGet(() -> ShownValue.of(value, checked.form()));
  }

  /** Where the value stands as a plain number, in a cell or as a line's whole formula. */
  static Optional<Span> literal(CheckedPlace checked, Spot spot) {
    if (checked.cells().formulas().containsKey(spot.row())) {
      return Optional.empty();
    }
    if (checked.cells().value(spot.row()) != null && spot.place() instanceof Column column) {
      return cell(checked, column, spot.row());
    }
    CheckedFormula formula = checked.formula();
    return formula != null && formula.literal().isPresent()
        ? Optional.of(formula.expression().span())
        : Optional.empty();
  }

  /** Where a row's cell stands: in an edit, or else in the text. */
  static Optional<Span> cell(CheckedPlace checked, Column column, int row) {
    Span typed = checked.cells().typed(row);
    return typed == null ? column.table().cell(column, row) : Optional.of(typed);
  }
}
