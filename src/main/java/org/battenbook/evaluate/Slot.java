package org.battenbook.evaluate;

import org.battenbook.bind.Spot;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * The position of a place in the results.
 *
 * @param number its index, counted from 0
 */
record Slot(int number, Place place) {

  boolean isColumn() {
    return place.table() != null;
  }

  /** The opened or planned table whose rows it stands for, as its key column; else absent. */
  @Nullable Table rowsOf() {
    Table table = place.table();
    return table != null && !table.isWritten() && place == table.keyColumn() ? table : null;
  }

  /** A value as a formula reads it. A fault of another place is something to wait for. */
  Value read(Value value, int row, Reading reading) {
    return value instanceof Value.Fault ? new Value.Waiting(words(row, reading), true) : value;
  }

  /** As people say it. */
  String words(int row, Reading reading) {
    Table table = place.table();
    return table == null ? place.label() : new Spot(place, row).words(reading.rows(table).keys());
  }
}
