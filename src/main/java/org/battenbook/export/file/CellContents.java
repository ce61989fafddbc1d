package org.battenbook.export.file;

import org.battenbook.number.Real;
import org.battenbook.unit.Form;
import org.battenbook.unit.Quantity;
import org.battenbook.value.Value;
import org.battenbook.value.ValueVisitor;
import org.jspecify.annotations.Nullable;

/**
 * Turns values into contents of cells.
 *
 * @param form gives the unit of numbers; without a form numbers are in base units
 */
public record CellContents(@Nullable Form form) implements ValueVisitor<CellContent> {

  /** The content for a value that is shown in a form. */
  public static CellContent of(Value value, @Nullable Form form) {
    return value.accept(new CellContents(form));
  }

  /** The content for a helper column: a number in base units, a row as its number from 1. */
  public static CellContent ofHelper(Value value) {
    return value instanceof Value.Row row ? new CellContent.Figure(row.row() + 1) : of(value, null);
  }

  @Override
  public CellContent amount(Value.Amount amount) {
    Quantity quantity = amount.quantity();
    Real number = form == null ? quantity.number() : quantity.in(form.unit());
    return new CellContent.Figure(number.toDouble());
  }

  @Override
  public CellContent text(Value.Text text) {
    return new CellContent.Words(text.text());
  }

  @Override
  public CellContent yesNo(Value.YesNo yesNo) {
    return new CellContent.Truth(yesNo.yes());
  }

  @Override
  public CellContent day(Value.Day day) {
    return new CellContent.Day(day.date());
  }

  @Override
  public CellContent row(Value.Row row) {
    return new CellContent.Words(row.name());
  }

  @Override
  public CellContent fault(Value.Fault fault) {
    return new CellContent.Missing();
  }

  @Override
  public CellContent waiting(Value.Waiting waiting) {
    return new CellContent.Missing();
  }
}
