package org.battenbook.plan.stick;

import java.util.List;
import org.battenbook.number.Rational;

/**
 * One setting of the stop at the saw.
 *
 * @param length that is cut at it: the longest of its parts
 * @param parts that are cut at it, the longest first, equal ones in their order
 */
public record SawStop(Rational length, List<Part> parts) {
  public SawStop {
    parts = List.copyOf(parts);
  }

  /** How many pieces are cut at it. */
  public int count() {
    return parts.stream().mapToInt(Part::count).sum();
  }

  /** How much longer than asked for a part of it comes out. */
  public Rational added(Part part) {
    return length.minus(part.length());
  }
}
