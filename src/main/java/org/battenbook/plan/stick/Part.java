package org.battenbook.plan.stick;

import java.util.List;
import org.battenbook.number.Rational;
import org.battenbook.plan.Refusal;

/**
 * Pieces of one length to cut.
 *
 * @param label the name of the part
 * @param length the length along the stick, more than 0, in the job's unit of length
 * @param count the number of pieces, at least 0
 */
public record Part(String label, Rational length, int count) implements Demand {
  public Part {
    Refusal.unless(length.signum() > 0, "the length of part '" + label + "' must be more than 0");
    Refusal.unless(
        count >= 0, "the quantity of part '" + label + "' must be at least 0; it is " + count);
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
