package org.battenbook.plan.sheet;

import java.util.List;
import org.battenbook.number.Rational;

/**
 * The cutting layout of one sheet. Positions are measured from its top left corner, in the job's
 * unit of length.
 *
 * @param stock the stock the sheet comes from
 * @param pieces in the order in which cuts free them
 * @param cuts in the order in which to make them, trims first
 * @param offcuts what is left of the panels; strips narrower than a kerf are lost in the cut
 */
public record Sheet(SheetStock stock, List<Placed> pieces, List<Cut> cuts, List<Offcut> offcuts) {
  public Sheet {
    pieces = List.copyOf(pieces);
    cuts = List.copyOf(cuts);
    offcuts = List.copyOf(offcuts);
  }

  /** The direction of a cut. */
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
   * @param label the label of its part
   * @param area its place on the sheet
   * @param turned whether it is rotated by 90 degrees: {@code across} is then the part's {@code
   *     down}
   */
  public record Placed(String label, Area area, boolean turned) {}

  /**
   * A guillotine cut of one panel, from edge to edge.
   *
   * @param panel the panel that is cut
   * @param direction the direction of the cut
   * @param from where the kerf begins, measured from the sheet's left or top edge
   * @param to where the kerf ends: one kerf later, or at the panel's edge if that is nearer
   */
  public record Cut(Area panel, Direction direction, Rational from, Rational to) {}

  /**
   * What is left of a panel.
   *
   * @param kept whether both sides are at least the stock's minimum offcut
   */
  public record Offcut(Area area, boolean kept) {}
}
