package org.battenbook.export.formula;

import static org.battenbook.operation.SpreadsheetText.number;

import java.util.List;
import org.battenbook.export.layout.TableLayout;
import org.battenbook.number.Rational;
import org.battenbook.operation.SpreadsheetText;
import org.battenbook.operation.SpreadsheetText.Content;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;
import org.battenbook.value.ValueVisitor;

/**
 * Translates a value to the text of a formula. Numbers are in base units.
 *
 * @param sheet the sheet that the formula is on
 */
record ConstantTranslation(PlaceReads reads, String sheet)
    implements ValueVisitor<SpreadsheetText> {

  @Override
  public SpreadsheetText amount(Value.Amount amount) {
    if (amount.quantity().number() instanceof Rational exact) {
      return number(exact);
    }
    throw inexpressible();
  }

  @Override
  public SpreadsheetText text(Value.Text text) {
    return SpreadsheetText.text(text.text());
  }

  @Override
  public SpreadsheetText yesNo(Value.YesNo yesNo) {
    return SpreadsheetText.truth(yesNo.yes());
  }

  @Override
  public SpreadsheetText day(Value.Day day) {
    return SpreadsheetText.call(
        "DATE",
        Content.DATE,
        List.of(
            number(day.date().getYear()),
            number(day.date().getMonthValue()),
            number(day.date().getDayOfMonth())));
  }

  @Override
  public SpreadsheetText row(Value.Row row) {
    TableLayout table = reads.rowsOf(new Kind.RowOf(row.table()));
    SpreadsheetText name = SpreadsheetText.text(row.name());
    return SpreadsheetText.row(reads.match(name, table, sheet), name);
  }

  @Override
  public SpreadsheetText fault(Value.Fault fault) {
    throw inexpressible();
  }

  @Override
  public SpreadsheetText waiting(Value.Waiting waiting) {
    throw inexpressible();
  }

  private static Inexpressible inexpressible() {
    return new Inexpressible("it has no value yet");
  }
}
