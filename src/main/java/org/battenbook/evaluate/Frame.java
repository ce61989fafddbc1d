package org.battenbook.evaluate;

import java.util.List;
import org.battenbook.operation.Operation;
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

  /** Is shown every operation that is done, in functions and aggregates too, when one asks. */
  final @Nullable Watch watch;

  /** Looks on while a plan runs. */
  interface Watch {
    void applied(Operation operation, List<Value> operands);
  }

  Frame(
      Reading reading,
      int row,
      @Nullable Frame outer,
      List<Value> arguments,
      @Nullable Value @Nullable [] slots) {
    this(reading, row, outer, arguments, slots, null);
  }

  private Frame(
      Reading reading,
      int row,
      @Nullable Frame outer,
      List<Value> arguments,
      @Nullable Value @Nullable [] slots,
      @Nullable Watch watch) {
    this.reading = reading;
    this.row = row;
    this.outer = outer;
    this.arguments = arguments;
    this.slots = slots;
    this.watch = watch;
  }

  static Frame atRow(Reading reading, int row) {
    return new Frame(reading, row, null, List.of(), null);
  }

  static Frame watched(Reading reading, int row, Watch watch) {
    return new Frame(reading, row, null, List.of(), null, watch);
  }

  /** The frame of an aggregate's rows; they keep no slots, there are too many of them. */
  Frame inner() {
    return new Frame(reading, 0, this, arguments, null, watch);
  }

  /** The frame of a function's formula. */
  Frame calling(List<Value> values) {
    return new Frame(reading, row, outer, values, null, watch);
  }
}
