package org.battenbook.plan.stick;

import java.util.List;
import org.battenbook.number.Rational;
import org.battenbook.plan.Refusal;

/**
 * Pieces of one length to be cut.
 *
 * @param label what the pieces are called; the plan gives the part back with each of them
 * @param length along the stick, greater than zero, in the unit of all lengths of a job
 * @param count how many, not negative
 */
public record Part(String label, Rational length, int count) implements Demand {
  public Part {
    Refusal.unless(
        length.signum() > 0,
        "the length of part '" + label + "' is not above zero: correct it, or ask for none");
    Refusal.unless(
        count >= 0,
        "part '" + label + "' is asked for " + count + " times: say how many, or 0 for none");
  }

  @Override
  public List<Part> inOrder() {
    return List.of(this);
  }

  @Override
  public Part times(int otherCount) {
    return new Part(label, length, otherCount);
  }
}
