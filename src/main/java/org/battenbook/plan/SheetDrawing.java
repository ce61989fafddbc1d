package org.battenbook.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.battenbook.number.Rational;
import org.battenbook.plan.Sheet.Area;
import org.battenbook.plan.Sheet.Direction;

/** Lays one sheet out in exact lengths: the cuts of its trims, then those of its panels. */
final class SheetDrawing {
  private final SheetScale scale;
  private final SheetStock stock;
  private final Function<Integer, String> labels;
  private final List<Sheet.Placed> pieces = new ArrayList<>();
  private final List<Sheet.Cut> cuts = new ArrayList<>();
  private final List<Sheet.Offcut> offcuts = new ArrayList<>();

  SheetDrawing(SheetScale scale, SheetStock stock, Function<Integer, String> labels) {
    this.scale = scale;
    this.stock = stock;
    this.labels = labels;
  }

  Sheet draw(Panel panel) {
    draw(panel, trimmed());
    return new Sheet(stock, pieces, cuts, offcuts);
  }

  private Area trimmed() {
    SheetTrims trims = stock.trims();
    Area area = new Area(Rational.ZERO, Rational.ZERO, stock.across(), stock.down());
    area = trimFirst(area, Direction.DOWN, trims.left());
    area = trimLast(area, Direction.DOWN, trims.right());
    area = trimFirst(area, Direction.ACROSS, trims.top());
    return trimLast(area, Direction.ACROSS, trims.bottom());
  }

  /** A trim at the left or top ends with its kerf. */
  private Area trimFirst(Area area, Direction direction, Rational trim) {
    if (trim.signum() == 0) {
      return area;
    }
    cuts.add(
        new Sheet.Cut(area, direction, greater(Rational.ZERO, trim.minus(scale.kerf())), trim));
    return after(area, direction, trim);
  }

  /** A trim at the right or bottom begins with its kerf. */
  private Area trimLast(Area area, Direction direction, Rational trim) {
    if (trim.signum() == 0) {
      return area;
    }
    Rational at = end(area, direction).minus(trim);
    cuts.add(cut(area, direction, at));
    return before(area, direction, at);
  }

  private void draw(Panel panel, Area area) {
    Panel.Division division = panel.division();
    if (division != null) {
      Direction direction = division.direction();
      Rational side = scale.length(division.at()).minus(scale.kerf());
      Rational at = start(area, direction).plus(side);
      Sheet.Cut cut = cut(area, direction, at);
      cuts.add(cut);
      draw(division.first(), before(area, direction, at));
      draw(division.second(), after(area, direction, cut.to()));
    } else if (!panel.isFree()) {
      pieces.add(new Sheet.Placed(labels.apply(panel.kind()), area, panel.isTurned()));
    } else if (area.across().signum() > 0 && area.down().signum() > 0) {
      Rational least = stock.leastOffcut();
      boolean kept = area.across().compareTo(least) >= 0 && area.down().compareTo(least) >= 0;
      offcuts.add(new Sheet.Offcut(area, kept));
    }
  }

  /** The blade may hang over the panel's edge. */
  private Sheet.Cut cut(Area area, Direction direction, Rational at) {
    Rational to = at.plus(scale.kerf());
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
