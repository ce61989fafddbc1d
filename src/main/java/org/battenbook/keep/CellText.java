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
import org.battenbook.value.ValueVisitor;

/** Values as the cells of a workbook's text. */
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
    return value.accept(new InFull(column));
  }

  private final class InFull implements ValueVisitor<String> {
    private final Column column;

    InFull(Column column) {
      this.column = column;
    }

    @Override
    public String amount(Value.Amount amount) {
      return exactly(amount.quantity(), column);
    }

    @Override
    public String text(Value.Text text) {
      return quoted(text.text());
    }

    @Override
    public String yesNo(Value.YesNo yesNo) {
      return Boolean.toString(yesNo.yes());
    }

    @Override
    public String day(Value.Day day) {
      return shown(day);
    }

    @Override
    public String row(Value.Row row) {
      return quoted(row.name());
    }

    @Override
    public String fault(Value.Fault fault) {
      return shown(fault);
    }

    @Override
    public String waiting(Value.Waiting waiting) {
      return shown(waiting);
    }

    private String shown(Value value) {
      return quoted(ShownValue.of(value, null).text());
    }
  }

  private String exactly(Quantity quantity, Column column) {
    Shown shown = form(column, quantity).show(quantity);
    if (!shown.approximate() || !(quantity.number() instanceof Rational exact)) {
      return shown.text();
    }
    Optional<Rational> millimeters =
        quantity.dimension().equals(Dimension.LENGTH)
            ? Optional.of(exact.dividedBy(Units.MILLIMETRE.factor())).filter(Rational::isWhole)
            : Optional.empty();
    return millimeters
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
