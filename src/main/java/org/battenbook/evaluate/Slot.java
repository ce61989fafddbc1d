package org.battenbook.evaluate;

import org.battenbook.bind.Spot;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.value.Value;

/**
 * Where the results keep a place.
 *
 * @param number its place among the results
 */
record Slot(int number, Place place) {

  boolean isColumn() {
    return place.table() != null;
  }

  /** A value as the formula that reads it meets it: a fault elsewhere is something to wait for. */
  Value read(Value value, int row, Reading reading) {
    return value instanceof Value.Fault ? new Value.Waiting(words(row, reading), true) : value;
  }

  /** As people say it. */
  String words(int row, Reading reading) {
    Table table = place.table();
    return table == null ? place.label() : new Spot(place, row).words(reading.rows(table).keys());
  }
}
