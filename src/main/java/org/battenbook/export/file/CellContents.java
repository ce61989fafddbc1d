package org.battenbook.export.file;

import org.battenbook.unit.Form;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** Values as cells hold them. */
public final class CellContents {
  private CellContents() {}

  /**
   * A value in the form of its place.
   *
   * @param form of a quantity; its unit is that of the cell. Without one a number is in base units.
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

  /** A value as a helper column holds it: a quantity in base units, a row as its number from 1. */
  public static CellContent ofHelper(Value value) {
    return value instanceof Value.Row row ? new CellContent.Figure(row.row() + 1) : of(value, null);
  }
}
