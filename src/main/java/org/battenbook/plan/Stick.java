package org.battenbook.plan;

import java.util.List;
import org.battenbook.number.Rational;

/**
 * One stick, as it is cut.
 *
 * @param stock what it is
 * @param parts from the left end, the longest first
 * @param offcut what is left at the right end after one more cut, the trim taken off; never
 *     negative
 * @param kept whether the offcut is worth keeping
 */
public record Stick(Stock stock, List<Placed> parts, Rational offcut, boolean kept) {
  public Stick {
    parts = List.copyOf(parts);
  }

  /**
   * A part on its stick.
   *
   * @param label of the part
   * @param from where it begins, measured from the stick's left end
   * @param to where it ends
   */
  public record Placed(String label, Rational from, Rational to) {
    public Rational length() {
      return to.minus(from);
    }
  }
}
