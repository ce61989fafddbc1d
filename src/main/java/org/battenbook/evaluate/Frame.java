package org.battenbook.evaluate;

import java.util.List;
import org.battenbook.bind.Spot;
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

  /** Looks on; absent where nobody asks. */
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

  /** The frame of an aggregate's rows; they keep no slots, there are too many of them. */
  Frame inner() {
    return new Frame(reading, 0, this, arguments, null, watch);
  }

  /** The frame of a function's formula. */
  Frame calling(List<Value> values) {
    return new Frame(reading, row, outer, values, null, watch);
  }

  /** The frame of the formula that a change replaced: its nodes have slots of their own. */
  Frame replaced() {
    return calling(arguments);
  }

  /** Tells who watches of a value that is read. */
  void tellRead(Slot slot, int readRow, boolean isAround) {
    if (watch != null) {
      watch.read(new Spot(slot.place(), readRow), isAround);
    }
  }
}
