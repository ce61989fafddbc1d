package org.battenbook.planstore;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.battenbook.bound.Bound;
import org.battenbook.number.Rational;
import org.battenbook.plan.PlanWatch;
import org.battenbook.plan.stick.Demand;
import org.battenbook.plan.stick.MatchedSet;
import org.battenbook.plan.stick.Part;
import org.battenbook.plan.stick.Stick;
import org.battenbook.plan.stick.StickDrawing;
import org.battenbook.plan.stick.StickDrawing.Copy;
import org.battenbook.plan.stick.StickJob;
import org.battenbook.plan.stick.StickPlan;
import org.battenbook.plan.stick.StickPlanner;
import org.battenbook.plan.stick.Stock;
import org.battenbook.plan.stick.Stretch;

/**
 * Stick plans as bytes: for each stick its stock and what it is cut into, by numbers of the job.
 * Marks, offcuts and costs are worked out anew.
 */
final class StickPlans implements PlanKind<StickJob, StickPlan> {
  static final StickPlans KIND = new StickPlans();

  private StickPlans() {}

  @Override
  public String name() {
    return "sticks " + StickPlanner.VERSION;
  }

  @Override
  public StickPlan plan(StickJob job, long steps, PlanWatch watch) {
    return StickPlanner.plan(job, steps, watch);
  }

  @Override
  public void writeJob(StickJob job, Encoder to) {
    to.number(job.rules().kerf());
    to.number(job.rules().nest());
    to.count(job.parts().size());
    job.parts().forEach(part -> write(part, to));
    to.count(job.matchedSets().size());
    job.matchedSets().forEach(set -> write(set, to));
    to.count(job.stocks().size());
    job.stocks().forEach(stock -> write(stock, to));
  }

  private static void write(Part part, Encoder to) {
    to.text(part.label());
    to.number(part.length());
    to.count(part.count());
  }

  private static void write(MatchedSet set, Encoder to) {
    to.text(set.label());
    to.count(set.inOrder().size());
    set.inOrder().forEach(part -> write(part, to));
    to.count(set.count());
  }

  private static void write(Stock stock, Encoder to) {
    Stretch stretch = stock.stretch();
    to.text(stock.label());
    to.number(stretch.startsAt());
    to.number(stretch.length());
    to.number(stretch.firstTrim());
    to.number(stretch.lastTrim());
    to.number(stock.leastOffcut());
    to.number(stock.cost());
    to.limit(stock.onHand());
  }

  @Override
  public void writePlan(StickJob job, StickPlan plan, Encoder to) {
    Numbering<Stock> stocks = new Numbering<>(job.stocks());
    Numbering<Demand> demands = new Numbering<>(job.demands());
    to.count(plan.sticks().size());
    for (Stick stick : plan.sticks()) {
      to.count(stocks.of(stick.stock()));
      List<Copy> copies = copies(stick);
      to.count(copies.size());
      for (Copy copy : copies) {
        to.count(demands.of(copy.demand()));
        to.count(copy.number());
      }
    }
    Numbering<Demand> kinds =
        new Numbering<>(job.demands().stream().map(StickPlans::kind).toList());
    write(plan.tooLong(), kinds, to);
    write(plan.missing(), kinds, to);
    to.number(plan.bound());
  }

  private static List<Copy> copies(Stick stick) {
    List<Copy> copies = new ArrayList<>();
    int at = 0;
    while (at < stick.placed().size()) {
      Stick.Placed placed = stick.placed().get(at);
      Copy copy =
          placed
              .set()
              .map(one -> new Copy(one.set(), one.copy()))
              .orElseGet(() -> new Copy(placed.part(), 1));
      copies.add(copy);
      at += copy.demand().inOrder().size();
    }
    return copies;
  }

  /** What is asked for, however often. */
  private static Demand kind(Demand demand) {
    return demand.times(0);
  }

  private static void write(List<Demand> some, Numbering<Demand> kinds, Encoder to) {
    to.count(some.size());
    for (Demand demand : some) {
      to.count(kinds.of(kind(demand)));
      to.count(demand.count());
    }
  }

  @Override
  public StickPlan readPlan(StickJob job, Decoder from) throws Damaged {
    return new Reading(job, from).plan();
  }

  /** One plan being read. */
  private static final class Reading {
    private final StickJob job;
    private final Decoder from;
    private final List<Demand> demands;
    private final Counts<Demand> asked = new Counts<>();
    private final Counts<Copy> copies = new Counts<>();
    private final Counts<Stock> onHand;

    Reading(StickJob job, Decoder from) {
      this.job = job;
      this.from = from;
      this.demands = job.demands();
      this.onHand = Counts.of(job.stocks(), Stock::onHand);
      demands.forEach(demand -> asked.add(kind(demand), OptionalInt.of(demand.count())));
      job.matchedSets().forEach(this::addCopies);
    }

    private void addCopies(MatchedSet set) {
      for (int number = 1; number <= set.count(); number++) {
        copies.add(new Copy(set, number), OptionalInt.of(1));
      }
    }

    StickPlan plan() throws Damaged {
      List<Stick> sticks = sticks();
      List<Demand> tooLong = some();
      List<Demand> missing = some();
      Damaged.unless(asked.areAllTaken(), "a part is neither cut nor missing");
      Damaged.unless(tooLong.stream().noneMatch(this::isHeld), "a part is not too long");
      Rational bound = from.number();
      Rational used =
          sticks.stream().map(stick -> stick.stock().cost()).reduce(Rational.ZERO, Reading::sum);
      boolean isWhole = missing.isEmpty();
      Damaged.unless(bound.signum() >= 0, "the bound is below zero");
      Damaged.unless(!isWhole || bound.compareTo(used) <= 0, "the bound is above the cost");
      return new StickPlan(
          sticks, tooLong, missing, used, bound, isWhole && bound.compareTo(used) == 0);
    }

    private static Rational sum(Rational a, Rational b) {
      return a.plus(b);
    }

    private List<Stick> sticks() throws Damaged {
      StickDrawing drawing = new StickDrawing(job.rules());
      int count = from.count(Bound.STICK_PIECES.most());
      for (int stick = 0; stick < count; stick++) {
        Stock stock = one(job.stocks());
        onHand.take(stock, 1);
        drawing.add(stock, cutFromOne());
      }
      for (Stick stick : drawing.sticks()) {
        Rational end = stick.placed().get(stick.placed().size() - 1).to();
        Damaged.unless(
            end.compareTo(stick.stock().stretch().to()) <= 0, "pieces reach past their stick");
      }
      return drawing.sticks();
    }

    private List<Copy> cutFromOne() throws Damaged {
      List<Copy> cut = new ArrayList<>();
      int count = from.count(Bound.STICK_PIECES.most());
      Damaged.unless(count > 0, "nothing is cut from a stick");
      for (int i = 0; i < count; i++) {
        Copy copy = new Copy(one(demands), from.count(Bound.STICK_PIECES.most()));
        asked.take(kind(copy.demand()), 1);
        if (copy.demand() instanceof MatchedSet) {
          copies.take(copy, 1);
        }
        cut.add(copy);
      }
      return cut;
    }

    private <T> T one(List<T> all) throws Damaged {
      Damaged.unless(!all.isEmpty(), "there is none to choose from");
      return all.get(from.count(all.size() - 1));
    }

    private List<Demand> some() throws Damaged {
      List<Demand> some = new ArrayList<>();
      int count = from.count(Bound.PLAN_KINDS.most());
      for (int i = 0; i < count; i++) {
        Demand demand = one(demands).times(from.count(Bound.STICK_PIECES.most()));
        asked.take(kind(demand), demand.count());
        some.add(demand);
      }
      return some;
    }

    private boolean isHeld(Demand demand) {
      Rational pace = job.rules().pace(demand);
      return job.stocks().stream()
          .filter(stock -> stock.stretch().usable().signum() > 0)
          .anyMatch(stock -> pace.compareTo(job.rules().room(stock)) <= 0);
    }
  }
}
