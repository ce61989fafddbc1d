package org.battenbook.column;

import org.battenbook.number.Real;
import org.jspecify.annotations.Nullable;

/** Finds the row with the least number; of several, the first. */
final class Extreme {
  private Extreme() {}

  static int rowOfLeast(NumberLane lane, @Nullable BitLane chosen) {
    BitLane rows = chosen == null ? BitLane.constant(lane.rows(), true) : chosen;
    return lane instanceof LongLane longs ? ofLongs(longs.ticks, rows) : ofReals(lane, rows);
  }

  private static int ofLongs(long[] ticks, BitLane rows) {
    int least = rows.next(0);
    for (int row = least; row >= 0; row = rows.next(row + 1)) {
      if (ticks[row] < ticks[least]) {
        least = row;
      }
    }
    return least;
  }

  private static int ofReals(NumberLane lane, BitLane rows) {
    int least = rows.next(0);
    @Nullable Real number = null;
    for (int row = least; row >= 0; row = rows.next(row + 1)) {
      Real other = lane.at(row);
      if (number == null || other.compareTo(number) < 0) {
        number = other;
        least = row;
      }
    }
    return least;
  }
}
