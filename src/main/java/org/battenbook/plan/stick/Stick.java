package org.battenbook.plan.stick;

import java.util.List;
import java.util.Optional;
import org.battenbook.number.Rational;

/**
 * The cutting layout of one stick. Positions are measured from the left end of the whole stick.
 *
 * @param stock the stock the stick comes from
 * @param pattern the number of its cutting pattern, from 1 in the order of first use; sticks of one
 *     stock that are cut into the same lengths in the same order share it
 * @param placed the pieces from left to right, the longest parts and sets first
 * @param offcut what is left at the right end
 */
public record Stick(Stock stock, int pattern, List<Placed> placed, Offcut offcut) {
  public Stick {
    placed = List.copyOf(placed);
  }

  /**
   * A piece on its stick.
   *
   * @param part its part, from the job or the matched set
   * @param set the matched set that it belongs to, if any
   * @param from where its longer edge starts
   * @param to where its longer edge ends
   * @param turned whether it is flipped end for end, so that its longer edge is at the other edge
   *     of the stick
   */
  public record Placed(
      Part part, Optional<SetCopy> set, Rational from, Rational to, boolean turned) {
    public Rational length() {
      return to.minus(from);
    }
  }

  /**
   * One copy of a matched set.
   *
   * @param copy its number, from 1
   */
  public record SetCopy(MatchedSet set, int copy) {}

  /**
   * What is left of a stick after the last piece and one more cut, up to the trim. It is measured
   * along the longer edge of the last piece. Its length is 0 if nothing is left.
   *
   * @param kept whether it is at least as long as the stock's minimum offcut
   */
  public record Offcut(Rational from, Rational to, boolean kept) {
    public Rational length() {
      return to.minus(from);
    }
  }
}
