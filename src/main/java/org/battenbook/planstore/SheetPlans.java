package org.battenbook.planstore;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.battenbook.bound.Bound;
import org.battenbook.number.Rational;
import org.battenbook.plan.PlanWatch;
import org.battenbook.plan.sheet.CutStep;
import org.battenbook.plan.sheet.Sheet;
import org.battenbook.plan.sheet.Sheet.Area;
import org.battenbook.plan.sheet.Sheet.Direction;
import org.battenbook.plan.sheet.SheetDrawing;
import org.battenbook.plan.sheet.SheetJob;
import org.battenbook.plan.sheet.SheetPart;
import org.battenbook.plan.sheet.SheetPlan;
import org.battenbook.plan.sheet.SheetPlanner;
import org.battenbook.plan.sheet.SheetStock;

/**
 * Sheet plans as bytes: for each sheet its stock and the steps in which it is cut. Trims, places,
 * offcuts and costs are worked out anew, so that cuts go right across and no pieces overlap.
 */
final class SheetPlans implements PlanKind<SheetJob, SheetPlan> {
  static final SheetPlans KIND = new SheetPlans();

  private static final int REST = 0;
  private static final int PIECE = 1;
  private static final int TURNED_PIECE = 2;
  private static final int ACROSS = 3;
  private static final int DOWN = 4;

  private SheetPlans() {}

  @Override
  public String name() {
    return "sheets " + SheetPlanner.VERSION;
  }

  @Override
  public SheetPlan plan(SheetJob job, long steps, PlanWatch watch) {
    return SheetPlanner.plan(job, steps, watch);
  }

  @Override
  public void writeJob(SheetJob job, Encoder to) {
    to.number(job.kerf());
    to.limit(job.stages());
    to.count(job.parts().size());
    job.parts().forEach(part -> write(part, to));
    to.count(job.stocks().size());
    job.stocks().forEach(stock -> write(stock, to));
  }

  private static void write(SheetPart part, Encoder to) {
    to.text(part.label());
    to.number(part.across());
    to.number(part.down());
    to.count(part.count());
    to.flag(part.mayTurn());
  }

  private static void write(SheetStock stock, Encoder to) {
    to.text(stock.label());
    to.number(stock.across());
    to.number(stock.down());
    to.number(stock.cost());
    to.limit(stock.onHand());
    to.number(stock.trims().left());
    to.number(stock.trims().right());
    to.number(stock.trims().top());
    to.number(stock.trims().bottom());
    to.number(stock.leastOffcut());
  }

  /** What is cut, however often, and however it may be turned. */
  private record Kind(String label, Rational across, Rational down) {
    static Kind of(SheetPart part) {
      return new Kind(part.label(), part.across(), part.down());
    }

    static Kind of(Sheet.Placed placed) {
      Area area = placed.area();
      return placed.turned()
          ? new Kind(placed.label(), area.down(), area.across())
          : new Kind(placed.label(), area.across(), area.down());
    }
  }

  @Override
  public void writePlan(SheetJob job, SheetPlan plan, Encoder to) {
    Numbers numbers = new Numbers(job);
    Numbering<SheetStock> stocks = new Numbering<>(job.stocks());
    to.count(plan.sheets().size());
    for (Sheet sheet : plan.sheets()) {
      to.count(stocks.of(sheet.stock()));
      SheetDrawing.follow(sheet, job.kerf(), new Steps(numbers, to));
    }
    numbers.write(plan.tooLarge(), to);
    numbers.write(plan.missing(), to);
    to.number(plan.bound());
  }

  /** The numbers of a job's parts, turned pieces among those that may be turned. */
  private static final class Numbers {
    private final Numbering<Kind> all;
    private final Numbering<Turning> turning;
    private final Numbering<SheetPart> bare;

    private record Turning(Kind kind, boolean mayTurn) {}

    Numbers(SheetJob job) {
      this.all = new Numbering<>(job.parts().stream().map(Kind::of).toList());
      this.turning =
          new Numbering<>(
              job.parts().stream().map(p -> new Turning(Kind.of(p), p.mayTurn())).toList());
      this.bare = new Numbering<>(job.parts().stream().map(SheetPlans::bare).toList());
    }

    int of(Sheet.Placed placed) {
      Kind kind = Kind.of(placed);
      return placed.turned() ? turning.of(new Turning(kind, true)) : all.of(kind);
    }

    void write(List<SheetPart> some, Encoder to) {
      to.count(some.size());
      for (SheetPart part : some) {
        to.count(bare.of(bare(part)));
        to.count(part.count());
      }
    }
  }

  private static SheetPart bare(SheetPart part) {
    return part.times(0);
  }

  private record Steps(Numbers numbers, Encoder to) implements SheetDrawing.Follower {
    @Override
    public void cut(Direction direction, Rational side) {
      to.count(direction == Direction.ACROSS ? ACROSS : DOWN);
      to.number(side);
    }

    @Override
    public void piece(Sheet.Placed placed) {
      to.count(placed.turned() ? TURNED_PIECE : PIECE);
      to.count(numbers.of(placed));
    }

    @Override
    public void rest() {
      to.count(REST);
    }
  }

  @Override
  public SheetPlan readPlan(SheetJob job, Decoder from) throws Damaged {
    return new Reading(job, from).plan();
  }

  /** One plan being read. */
  private static final class Reading {
    private final SheetJob job;
    private final Decoder from;
    private final Counts<Kind> asked = new Counts<>();
    private final Counts<SheetStock> onHand;

    Reading(SheetJob job, Decoder from) {
      this.job = job;
      this.from = from;
      this.onHand = Counts.of(job.stocks(), SheetStock::onHand);
      job.parts().forEach(part -> asked.add(Kind.of(part), OptionalInt.of(part.count())));
    }

    SheetPlan plan() throws Damaged {
      List<Sheet> sheets = new ArrayList<>();
      int count = from.count(Bound.SHEET_PIECES.most());
      for (int sheet = 0; sheet < count; sheet++) {
        sheets.add(sheet());
      }
      List<SheetPart> tooLarge = some();
      List<SheetPart> missing = some();
      Damaged.unless(asked.areAllTaken(), "a part is neither cut nor missing");
      Damaged.unless(tooLarge.stream().noneMatch(this::isHeld), "a part is not too large");
      Rational bound = from.number();
      Rational used =
          sheets.stream().map(s -> s.stock().cost()).reduce(Rational.ZERO, Reading::sum);
      boolean isWhole = missing.isEmpty();
      Damaged.unless(bound.signum() >= 0, "the bound is below zero");
      Damaged.unless(!isWhole || bound.compareTo(used) <= 0, "the bound is above the cost");
      return new SheetPlan(
          sheets, tooLarge, missing, used, bound, isWhole && bound.compareTo(used) == 0);
    }

    private static Rational sum(Rational a, Rational b) {
      return a.plus(b);
    }

    private Sheet sheet() throws Damaged {
      SheetStock stock = one(job.stocks());
      onHand.take(stock, 1);
      List<CutStep> steps = steps();
      Damaged.unless(
          job.stages().isEmpty() || CutStep.stages(steps) <= job.stages().getAsInt(),
          "a sheet takes too many stages");
      Sheet sheet = SheetDrawing.draw(stock, job.kerf(), steps);
      Damaged.unless(!sheet.pieces().isEmpty(), "nothing is cut from a sheet");
      for (Sheet.Cut cut : sheet.cuts()) {
        Damaged.unless(isWithinItsPanel(cut), "a cut misses its panel");
      }
      takePieces(sheet, steps);
      return sheet;
    }

    /** Each panel that is a piece must be as large as its part. */
    private void takePieces(Sheet sheet, List<CutStep> steps) throws Damaged {
      int number = 0;
      for (CutStep step : steps) {
        if (step instanceof CutStep.Piece piece) {
          Kind kind = Kind.of(piece.part());
          Damaged.unless(
              kind.equals(Kind.of(sheet.pieces().get(number++))), "a piece is of another size");
          asked.take(kind, 1);
        }
      }
    }

    private List<CutStep> steps() throws Damaged {
      List<CutStep> steps = new ArrayList<>();
      for (int open = 1; open > 0; ) {
        CutStep step = step();
        steps.add(step);
        open += step instanceof CutStep.Cut ? 1 : -1;
      }
      return steps;
    }

    private CutStep step() throws Damaged {
      return switch (from.count(DOWN)) {
        case REST -> new CutStep.Rest();
        case PIECE -> new CutStep.Piece(one(job.parts()), false);
        case TURNED_PIECE -> turned(one(job.parts()));
        case ACROSS -> new CutStep.Cut(Direction.ACROSS, from.number());
        default -> new CutStep.Cut(Direction.DOWN, from.number());
      };
    }

    private static CutStep turned(SheetPart part) throws Damaged {
      Damaged.unless(part.mayTurn(), "a part is turned that may not be");
      return new CutStep.Piece(part, true);
    }

    private static boolean isWithinItsPanel(Sheet.Cut cut) {
      boolean down = cut.direction() == Direction.DOWN;
      Rational start = down ? cut.panel().left() : cut.panel().top();
      return start.compareTo(cut.from()) <= 0 && cut.from().compareTo(cut.to()) <= 0;
    }

    private <T> T one(List<T> all) throws Damaged {
      Damaged.unless(!all.isEmpty(), "there is none to choose from");
      return all.get(from.count(all.size() - 1));
    }

    private List<SheetPart> some() throws Damaged {
      List<SheetPart> some = new ArrayList<>();
      int count = from.count(Bound.PLAN_KINDS.most());
      for (int i = 0; i < count; i++) {
        SheetPart part = one(job.parts()).times(from.count(Bound.SHEET_PIECES.most()));
        asked.take(Kind.of(part), part.count());
        some.add(part);
      }
      return some;
    }

    private boolean isHeld(SheetPart part) {
      return job.stocks().stream().anyMatch(stock -> stock.holds(part));
    }
  }
}
