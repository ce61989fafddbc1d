package org.battenbook.plan.stick;

import java.util.List;
import java.util.Optional;
import org.battenbook.number.Rational;

/**
 * One stick, as it is cut. Places are measured from the left end of the whole stick.
 *
 * @param stock what it is
 * @param pattern a number that sticks of one stock share which are cut into the same lengths in the
 *     same order; from 1 on, in the order of first use
 * @param placed from left to right, the longest parts and sets first
 * @param offcut what is left at the right end
 */
public record Stick(Stock stock, int pattern, List<Placed> placed, Offcut offcut) {
  public Stick {
    placed = List.copyOf(placed);
  }

  /**
   * A piece on its stick.
   *
   * @param part what it is, as the job or the set names it
   * @param set the set that it belongs to, if any
   * @param from where its longer edge begins
   * @param to where that ends
   * @param turned whether it lies turned end for end, its longer edge at the other edge of the
   *     stick
   */
  public record Placed(
      Part part, Optional<SetCopy> set, Rational from, Rational to, boolean turned) {
    public Rational length() {
      return to.minus(from);
    }
  }

  /**
   * One of the sets that are asked for.
   *
   * @param copy which of them, from 1 on
   */
  public record SetCopy(MatchedSet set, int copy) {}

  /**
   * What is left after one more cut, up to the trim, along the longer edge of the last piece; of no
   * length where nothing is.
   *
   * @param kept whether it is worth keeping
   */
  public record Offcut(Rational from, Rational to, boolean kept) {
    public Rational length() {
      return to.minus(from);
    }
  }
}
