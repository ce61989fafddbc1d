package org.battenbook.keep;

/**
 * Stock of one row that is taken.
 *
 * @param onHand how many there were
 */
record Taken(int taken, int onHand) {
  int left() {
    return onHand - taken;
  }

  Taken and(int more) {
    return new Taken(taken + more, onHand);
  }
}
