package org.battenbook.evaluate;

import java.util.List;

/**
 * Places that are worked out together: one place, or columns of one table that read each other's
 * row above and so go row by row, in this order within a row.
 */
record Stage(List<Slot> slots, boolean rowByRow) {
  Stage {
    slots = List.copyOf(slots);
  }
}
