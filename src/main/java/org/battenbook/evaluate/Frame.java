package org.battenbook.evaluate;

import java.util.List;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** What a plan reads while it runs: the results so far, the row at hand, arguments. */
final class Frame {
  final Reading reading;

  /** The row at hand, counted from 0; 0 outside of tables. */
  int row;

  /** The row around an aggregate. */
  final @Nullable Frame outer;

  final List<Value> arguments;

  /** Where each node's value is kept, by its id, when a derivation asks for it. */
  final @Nullable Value @Nullable [] slots;

  Frame(
      Reading reading,
      int row,
      @Nullable Frame outer,
      List<Value> arguments,
      @Nullable Value @Nullable [] slots) {
    this.reading = reading;
    this.row = row;
    this.outer = outer;
    this.arguments = arguments;
    this.slots = slots;
  }

  static Frame atRow(Reading reading, int row) {
    return new Frame(reading, row, null, List.of(), null);
  }

  /** The frame of an aggregate's rows; they keep no slots, there are too many of them. */
  Frame inner() {
    return new Frame(reading, 0, this, arguments, null);
  }

  /** The frame of a function's formula. */
  Frame calling(List<Value> values) {
    return new Frame(reading, row, outer, values, null);
  }
}
