package org.battenbook.plan.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.battenbook.number.Rational;
import org.battenbook.plan.sheet.Sheet.Area;
import org.battenbook.plan.sheet.Sheet.Direction;
import org.jspecify.annotations.Nullable;

/**
 * Checks a plan against its job, knowing nothing of how it was found: each sheet is cut anew with
 * rationals, cut after cut, and the panels that are left at the end must be its pieces and offcuts.
 */
public final class SheetCheck {
  private final SheetJob job;
  private final SheetPlan plan;

  private SheetCheck(SheetJob job, SheetPlan plan) {
    this.job = job;
    this.plan = plan;
  }

  /** Fails where the plan is not what the job asks for; gives it back else. */
  public static SheetPlan checked(SheetJob job, SheetPlan plan) {
    SheetCheck check = new SheetCheck(job, plan);
    plan.sheets().forEach(check::cut);
    check.countParts();
    check.countSheets();
    check.addCosts();
    return plan;
  }

  /** A panel that is there, how many stages it took, and how it was cut off last. */
  private record There(Area area, int stages, @Nullable Direction last) {}

  private void cut(Sheet sheet) {
    SheetStock stock = sheet.stock();
    int trims = trims(stock);
    Area usable =
        new Area(
            stock.trims().left(), stock.trims().top(), stock.usableAcross(), stock.usableDown());
    checkTrims(stock, sheet.cuts().subList(0, trims), usable);
    Map<Area, There> there = new HashMap<>();
    there.put(usable, new There(usable, 0, null));
    for (Sheet.Cut cut : sheet.cuts().subList(trims, sheet.cuts().size())) {
      There panel = there.remove(cut.panel());
      if (panel == null) {
        throw new AssertionError("there is no panel for " + cut);
      }
      for (There half : halves(panel, cut)) {
        there.put(half.area(), half);
      }
    }
    compare(sheet, there);
  }

  private static int trims(SheetStock stock) {
    SheetTrims trims = stock.trims();
    return trims.left().signum()
        + trims.right().signum()
        + trims.top().signum()
        + trims.bottom().signum();
  }

  private void checkTrims(SheetStock stock, List<Sheet.Cut> cuts, Area usable) {
    Area area = new Area(Rational.ZERO, Rational.ZERO, stock.across(), stock.down());
    for (Sheet.Cut cut : cuts) {
      assertThat(cut.panel()).isEqualTo(area);
      Rational middle = cut.direction() == Direction.DOWN ? stock.across() : stock.down();
      boolean first = cut.to().plus(cut.from()).compareTo(middle) < 0;
      List<Area> halves = parts(area, cut);
      area = halves.get(first ? 1 : 0);
    }
    assertThat(area).isEqualTo(usable);
  }

  private List<There> halves(There panel, Sheet.Cut cut) {
    int stages = panel.stages() + (panel.last() == cut.direction() ? 0 : 1);
    job.stages().ifPresent(most -> assertThat(stages).isLessThanOrEqualTo(most));
    Rational width = cut.to().minus(cut.from());
    boolean down = cut.direction() == Direction.DOWN;
    Rational end = down ? panel.area().right() : panel.area().bottom();
    assertThat(width).isLessThanOrEqualTo(job.kerf());
    assertThat(width.equals(job.kerf()) || cut.to().equals(end)).isTrue();
    return parts(panel.area(), cut).stream()
        .filter(area -> area.across().signum() > 0 && area.down().signum() > 0)
        .map(area -> new There(area, stages, cut.direction()))
        .toList();
  }

  private static List<Area> parts(Area area, Sheet.Cut cut) {
    Rational from = cut.from();
    Rational to = cut.to();
    if (cut.direction() == Direction.DOWN) {
      return List.of(
          new Area(area.left(), area.top(), from.minus(area.left()), area.down()),
          new Area(to, area.top(), area.right().minus(to), area.down()));
    }
    return List.of(
        new Area(area.left(), area.top(), area.across(), from.minus(area.top())),
        new Area(area.left(), to, area.across(), area.bottom().minus(to)));
  }

  /** Panels come of halving alone: they cannot overlap, and nothing is lost but kerfs. */
  private static void compare(Sheet sheet, Map<Area, There> there) {
    List<Area> told = new ArrayList<>();
    sheet.pieces().forEach(piece -> told.add(piece.area()));
    for (Sheet.Offcut offcut : sheet.offcuts()) {
      told.add(offcut.area());
      Rational least = sheet.stock().leastOffcut();
      boolean large =
          offcut.area().across().compareTo(least) >= 0
              && offcut.area().down().compareTo(least) >= 0;
      assertThat(offcut.kept()).isEqualTo(large);
    }
    assertThat(sheet.pieces()).isNotEmpty();
    assertThat(told).containsExactlyInAnyOrderElementsOf(there.keySet());
  }

  private record Piece(String label, Rational across, Rational down) {}

  private void countParts() {
    Map<Piece, Integer> asked = new HashMap<>();
    Map<Piece, Boolean> turns = new HashMap<>();
    job.parts().forEach(part -> count(asked, part, 1));
    job.parts().forEach(p -> turns.put(new Piece(p.label(), p.across(), p.down()), p.mayTurn()));
    for (Sheet sheet : plan.sheets()) {
      for (Sheet.Placed placed : sheet.pieces()) {
        Area area = placed.area();
        Piece piece =
            placed.turned()
                ? new Piece(placed.label(), area.down(), area.across())
                : new Piece(placed.label(), area.across(), area.down());
        asked.merge(piece, -1, Integer::sum);
        assertThat(!placed.turned() || turns.getOrDefault(piece, false)).isTrue();
      }
    }
    plan.tooLarge().forEach(part -> count(asked, part, -1));
    plan.missing().forEach(part -> count(asked, part, -1));
    assertThat(asked.values()).allMatch(count -> count == 0);
  }

  private static void count(Map<Piece, Integer> pieces, SheetPart part, int sign) {
    Piece piece = new Piece(part.label(), part.across(), part.down());
    pieces.merge(piece, sign * part.count(), Integer::sum);
  }

  private void countSheets() {
    Map<SheetStock, Integer> taken = new HashMap<>();
    plan.sheets().forEach(sheet -> taken.merge(sheet.stock(), 1, Integer::sum));
    taken.forEach(
        (stock, count) -> {
          assertThat(job.stocks()).contains(stock);
          assertThat(count).isLessThanOrEqualTo(stock.onHand().orElse(Integer.MAX_VALUE));
        });
  }

  private void addCosts() {
    Rational cost = Rational.ZERO;
    for (Sheet sheet : plan.sheets()) {
      cost = cost.plus(sheet.stock().cost());
    }
    assertThat(plan.used()).isEqualTo(cost);
    if (plan.missing().isEmpty()) {
      assertThat(plan.bound()).isLessThanOrEqualTo(cost);
    }
    assertThat(plan.proven()).isEqualTo(plan.missing().isEmpty() && plan.bound().equals(cost));
  }
}
