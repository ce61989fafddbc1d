package org.battenbook.plan;

import org.battenbook.number.Rational;

/**
 * Pieces of one length to be cut.
 *
 * @param label what the pieces are called; the plan gives it back with each of them
 * @param length along the stick, greater than zero, in the unit of all lengths of a job
 * @param count how many, not negative
 */
public record Part(String label, Rational length, int count) {
  public Part {
    Refusal.unless(length.signum() > 0, "the length of part '" + label + "' is not above zero");
    Refusal.unless(count >= 0, "part '" + label + "' is asked for " + count + " times");
  }
}
