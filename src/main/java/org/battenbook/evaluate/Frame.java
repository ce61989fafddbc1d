package org.battenbook.evaluate;

import java.util.List;
import org.battenbook.bind.Spot;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** What a node reads while it runs: the results so far, the row at hand, arguments. */
final class Frame {
  final Reading reading;

  /** The row at hand, counted from 0; 0 outside of tables. */
  int row;

  /** The row around an aggregate. */
  final @Nullable Frame outer;

  final List<Value> arguments;

  /** Keeps the value of each node by its id; absent unless a derivation asks for it. */
  final @Nullable Value @Nullable [] slots;

  /** Watches what is read; absent where nobody asks. */
  final @Nullable Watch watch;

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
    return watched(reading, row, null);
  }

  static Frame watched(Reading reading, int row, @Nullable Watch watch) {
    return new Frame(reading, row, null, List.of(), null, watch);
  }

  /** A frame that keeps the value of each node. */
  static Frame traced(Reading reading, int row, @Nullable Value[] slots, @Nullable Watch watch) {
    return new Frame(reading, row, null, List.of(), slots, watch);
  }

  /** The frame of the rows of an aggregate. They keep no values: there are too many rows. */
  Frame inner() {
    return new Frame(reading, 0, this, arguments, null, watch);
  }

  /** The frame of a function's formula. */
  Frame calling(List<Value> values) {
    return new Frame(reading, row, outer, values, null, watch);
  }

  /** The frame of the formula that a change replaced: its nodes keep values of their own. */
  Frame replaced() {
    return calling(arguments);
  }

  /** Tells the watch that a value is read. */
  void tellRead(Slot slot, int readRow, boolean isAround) {
    if (watch != null) {
      watch.read(new Spot(slot.place(), readRow), isAround);
    }
  }
}
