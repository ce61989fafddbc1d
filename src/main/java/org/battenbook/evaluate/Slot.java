package org.battenbook.evaluate;

import org.battenbook.bind.RowKeys;
import org.battenbook.bind.Spot;
import org.battenbook.book.Column;
import org.battenbook.book.Place;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * Where the results keep a place.
 *
 * @param number its place among the results
 * @param keys the row names of a column's table; absent for lines
 */
record Slot(int number, Place place, @Nullable RowKeys keys) {

  boolean isColumn() {
    return place instanceof Column;
  }

  /** A value as the formula that reads it meets it: a fault elsewhere is something to wait for. */
  Value read(Value value, int row) {
    return value instanceof Value.Fault ? new Value.Waiting(words(row), true) : value;
  }

  /** As people say it. */
  String words(int row) {
    return keys == null ? place.words() : new Spot(place, row).words(keys);
  }
}
