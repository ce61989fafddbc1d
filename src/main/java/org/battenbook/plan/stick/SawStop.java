package org.battenbook.plan.stick;

import java.util.List;
import org.battenbook.number.Rational;

/**
 * One setting of the stop at the saw.
 *
 * @param length the length cut at this stop: that of its longest part
 * @param parts the parts cut at this stop, the longest first; equal lengths keep their order
 */
public record SawStop(Rational length, List<Part> parts) {
  public SawStop {
    parts = List.copyOf(parts);
  }

  /** The number of pieces cut at this stop. */
  public int count() {
    return parts.stream().mapToInt(Part::count).sum();
  }

  /** How much longer a part is cut than its own length. */
  public Rational added(Part part) {
    return length.minus(part.length());
  }
}
