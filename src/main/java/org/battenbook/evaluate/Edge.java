package org.battenbook.evaluate;

import org.battenbook.check.Need.Reach;

/**
 * That a place is worked out from another.
 *
 * @param from the other
 * @param reach how much of it is read
 */
record Edge(Slot from, Reach reach) {}
