package org.battenbook.plan.sheet;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.battenbook.number.Rational;
import org.battenbook.plan.sheet.Sheet.Area;
import org.battenbook.plan.sheet.Sheet.Direction;

/** Draws the layout of one sheet in exact lengths: the trim cuts first, then the cuts of panels. */
public final class SheetDrawing {
  private final SheetStock stock;
  private final Rational kerf;
  private final List<Sheet.Placed> pieces = new ArrayList<>();
  private final List<Sheet.Cut> cuts = new ArrayList<>();
  private final List<Sheet.Offcut> offcuts = new ArrayList<>();

  /** A stack of the panels whose steps are still to come. */
  private final Deque<Area> open = new ArrayDeque<>();

  private SheetDrawing(SheetStock stock, Rational kerf) {
    this.stock = stock;
    this.kerf = kerf;
    open.push(trimmed());
  }

  /**
   * Draws a sheet.
   *
   * @param kerf the width of a cut
   * @param steps all steps of the sheet, in the order that {@link CutStep} defines
   */
  public static Sheet draw(SheetStock stock, Rational kerf, List<CutStep> steps) {
    SheetDrawing drawing = new SheetDrawing(stock, kerf);
    steps.forEach(drawing::add);
    return new Sheet(stock, drawing.pieces, drawing.cuts, drawing.offcuts);
  }

  /** Receives the steps of a drawn sheet; each method is one kind of {@link CutStep}. */
  public interface Follower {
    /** Receives a cut; {@code side} is as in {@link CutStep.Cut}. */
    void cut(Direction direction, Rational side);

    void piece(Sheet.Placed placed);

    void rest();
  }

  /** Recovers the steps of a drawn sheet, the inverse of {@link #draw}. */
  public static void follow(Sheet sheet, Rational kerf, Follower follower) {
    SheetDrawing drawing = new SheetDrawing(sheet.stock(), kerf);
    int cuts = drawing.cuts.size();
    int pieces = 0;
    while (!drawing.open.isEmpty()) {
      Area area = drawing.open.pop();
      if (cuts < sheet.cuts().size() && sheet.cuts().get(cuts).panel().equals(area)) {
        Sheet.Cut cut = sheet.cuts().get(cuts++);
        follower.cut(cut.direction(), cut.from().minus(start(area, cut.direction())));
        drawing.open(area, cut);
      } else if (pieces < sheet.pieces().size() && sheet.pieces().get(pieces).area().equals(area)) {
        follower.piece(sheet.pieces().get(pieces++));
      } else {
        follower.rest();
      }
    }
  }

  private void add(CutStep step) {
    Area area = open.pop();
    if (step instanceof CutStep.Cut one) {
      Sheet.Cut cut = cut(area, one.direction(), start(area, one.direction()).plus(one.side()));
      cuts.add(cut);
      open(area, cut);
    } else if (step instanceof CutStep.Piece piece) {
      pieces.add(new Sheet.Placed(piece.part().label(), area, piece.turned()));
    } else if (area.across().signum() > 0 && area.down().signum() > 0) {
      Rational least = stock.leastOffcut();
      boolean kept = area.across().compareTo(least) >= 0 && area.down().compareTo(least) >= 0;
      offcuts.add(new Sheet.Offcut(area, kept));
    }
  }

  private void open(Area area, Sheet.Cut cut) {
    open.push(after(area, cut.direction(), cut.to()));
    open.push(before(area, cut.direction(), cut.from()));
  }

  private Area trimmed() {
    SheetTrims trims = stock.trims();
    Area area = new Area(Rational.ZERO, Rational.ZERO, stock.across(), stock.down());
    area = trimFirst(area, Direction.DOWN, trims.left());
    area = trimLast(area, Direction.DOWN, trims.right());
    area = trimFirst(area, Direction.ACROSS, trims.top());
    return trimLast(area, Direction.ACROSS, trims.bottom());
  }

  /** Cuts the trim at the left or top; the kerf is the last part of the trim. */
  private Area trimFirst(Area area, Direction direction, Rational trim) {
    if (trim.signum() == 0) {
      return area;
    }
    cuts.add(new Sheet.Cut(area, direction, greater(Rational.ZERO, trim.minus(kerf)), trim));
    return after(area, direction, trim);
  }

  /** Cuts the trim at the right or bottom; the kerf is the first part of the trim. */
  private Area trimLast(Area area, Direction direction, Rational trim) {
    if (trim.signum() == 0) {
      return area;
    }
    Rational at = end(area, direction).minus(trim);
    cuts.add(cut(area, direction, at));
    return before(area, direction, at);
  }

  /** A cut whose kerf ends at the panel's edge at the latest, even if the blade is wider. */
  private Sheet.Cut cut(Area area, Direction direction, Rational at) {
    Rational to = at.plus(kerf);
    Rational end = end(area, direction);
    return new Sheet.Cut(area, direction, at, to.compareTo(end) > 0 ? end : to);
  }

  private static Rational start(Area area, Direction direction) {
    return direction == Direction.DOWN ? area.left() : area.top();
  }

  private static Rational end(Area area, Direction direction) {
    return direction == Direction.DOWN ? area.right() : area.bottom();
  }

  private static Area before(Area area, Direction direction, Rational at) {
    return direction == Direction.DOWN
        ? new Area(area.left(), area.top(), at.minus(area.left()), area.down())
        : new Area(area.left(), area.top(), area.across(), at.minus(area.top()));
  }

  private static Area after(Area area, Direction direction, Rational at) {
    return direction == Direction.DOWN
        ? new Area(at, area.top(), area.right().minus(at), area.down())
        : new Area(area.left(), at, area.across(), area.bottom().minus(at));
  }

  private static Rational greater(Rational a, Rational b) {
    return a.compareTo(b) >= 0 ? a : b;
  }
}
