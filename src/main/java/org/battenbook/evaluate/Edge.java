package org.battenbook.evaluate;

import org.battenbook.check.Need.Reach;

/**
 * A place that another place is worked out from.
 *
 * @param from the place that is read
 * @param reach how much of it is read
 */
record Edge(Slot from, Reach reach) {}
