package org.battenbook.export.file;

import org.battenbook.unit.Form;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** Turns values into contents of cells. */
public final class CellContents {
  private CellContents() {}

  /**
   * The content for a value that is shown in a form.
   *
   * @param form gives the unit of the number; without a form the number is in base units
   */
  public static CellContent of(Value value, @Nullable Form form) {
    if (value instanceof Value.Amount amount) {
      return new CellContent.Figure(
          form == null
              ? amount.quantity().number().toDouble()
              : amount.quantity().in(form.unit()).toDouble());
    }
    if (value instanceof Value.Text text) {
      return new CellContent.Words(text.text());
    }
    if (value instanceof Value.YesNo yesNo) {
      return new CellContent.Truth(yesNo.yes());
    }
    if (value instanceof Value.Day day) {
      return new CellContent.Day(day.date());
    }
    return value instanceof Value.Row row
        ? new CellContent.Words(row.name())
        : new CellContent.Missing();
  }

  /** The content for a helper column: a number in base units, a row as its number from 1. */
  public static CellContent ofHelper(Value value) {
    return value instanceof Value.Row row ? new CellContent.Figure(row.row() + 1) : of(value, null);
  }
}
