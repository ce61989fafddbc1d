package org.battenbook.keep;

import java.util.Optional;
import org.battenbook.book.Column;
import org.battenbook.check.CheckedBook;
import org.battenbook.number.Rational;
import org.battenbook.syntax.NumberPrinter;
import org.battenbook.unit.Dimension;
import org.battenbook.unit.Form;
import org.battenbook.unit.Quantity;
import org.battenbook.unit.Shown;
import org.battenbook.unit.Units;
import org.battenbook.value.ShownValue;
import org.battenbook.value.Value;

/** Values as cells of a workbook have them written. */
final class CellText {
  private final CheckedBook book;

  CellText(CheckedBook book) {
    this.book = book;
  }

  static String quoted(String words) {
    return '"' + words.replace("\"", "\"\"") + '"';
  }

  /** A value in full. */
  String exactly(Value value, Column column) {
    if (value instanceof Value.Amount amount) {
      return exactly(amount.quantity(), column);
    }
    String words = value instanceof Value.Row row ? row.name() : ShownValue.of(value, null).text();
    return value instanceof Value.YesNo yesNo ? Boolean.toString(yesNo.yes()) : quoted(words);
  }

  private String exactly(Quantity quantity, Column column) {
    Shown shown = form(column, quantity).show(quantity);
    if (!shown.approximate() || !(quantity.number() instanceof Rational exact)) {
      return shown.text();
    }
    Optional<Rational> millimetres =
        quantity.dimension().equals(Dimension.LENGTH)
            ? Optional.of(exact.dividedBy(Units.MILLIMETRE.factor())).filter(Rational::isWhole)
            : Optional.empty();
    return millimetres
        .map(whole -> NumberPrinter.print(whole) + " " + Units.MILLIMETRE.symbol())
        .orElseGet(() -> NumberPrinter.print(exact) + " " + quantity.dimension().baseSymbol());
  }

  /** A size as it is measured at the bench: no more than there is. */
  String atMost(Value value, Column column) {
    return value instanceof Value.Amount amount
        ? form(column, amount.quantity()).atMost(amount.quantity())
        : exactly(value, column);
  }

  private Form form(Column column, Quantity quantity) {
    Form form = book.place(column).form();
    return form == null ? book.forms().form(quantity.dimension()) : form;
  }
}
