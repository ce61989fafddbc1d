package org.battenbook.plan.sheet;

import java.util.List;
import org.battenbook.number.Rational;

/**
 * One sheet, as it is cut. All is measured from its top left corner.
 *
 * @param stock what it is
 * @param pieces in the order in which they come free
 * @param cuts in the order in which they are made, those of the trims first
 * @param offcuts what is left of the panels; what is narrower than a cut is gone with it
 */
public record Sheet(SheetStock stock, List<Placed> pieces, List<Cut> cuts, List<Offcut> offcuts) {
  public Sheet {
    pieces = List.copyOf(pieces);
    cuts = List.copyOf(cuts);
    offcuts = List.copyOf(offcuts);
  }

  /** How a cut runs. */
  public enum Direction {
    /** From left to right, at a distance from the top. */
    ACROSS,
    /** From top to bottom, at a distance from the left. */
    DOWN;

    Direction other() {
      return this == ACROSS ? DOWN : ACROSS;
    }
  }

  /** A rectangle on the sheet. */
  public record Area(Rational left, Rational top, Rational across, Rational down) {
    public Rational right() {
      return left.plus(across);
    }

    public Rational bottom() {
      return top.plus(down);
    }
  }

  /**
   * A piece on its sheet.
   *
   * @param label of the part
   * @param area where it lies
   * @param turned whether it was turned by a quarter: {@code across} is the part's {@code down}
   */
  public record Placed(String label, Area area, boolean turned) {}

  /**
   * A through-cut of one panel.
   *
   * @param panel what is cut right across
   * @param direction how the cut runs
   * @param from where the kerf begins, measured from the sheet's left edge or top
   * @param to where it ends: a kerf further on, or at the panel's edge where that is nearer
   */
  public record Cut(Area panel, Direction direction, Rational from, Rational to) {}

  /**
   * What is left of a panel.
   *
   * @param kept whether it is worth keeping
   */
  public record Offcut(Area area, boolean kept) {}
}
