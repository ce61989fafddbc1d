package org.battenbook.plan.stick;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.battenbook.number.Rational;

/**
 * Checks a plan against its job, knowing nothing of how it was found: each stick is laid out anew
 * with rationals, parts and sticks are counted, and costs added up.
 */
public final class PlanCheck {
  private final StickJob job;
  private final StickPlan plan;

  private PlanCheck(StickJob job, StickPlan plan) {
    this.job = job;
    this.plan = plan;
  }

  /** Fails where the plan is not what the job asks for; gives it back else. */
  public static StickPlan checked(StickJob job, StickPlan plan) {
    canBeCut(job, plan);
    new PlanCheck(job, plan).numberPatterns();
    return plan;
  }

  /** Fails where it cannot be cut, or is not what the job asks for, however its sticks come. */
  public static void canBeCut(StickJob job, StickPlan plan) {
    PlanCheck check = new PlanCheck(job, plan);
    plan.sticks().forEach(check::layOut);
    plan.sticks().forEach(check::keepApart);
    check.countDemands();
    check.countSticks();
    check.addCosts();
  }

  /** Pieces one after the other, as close as they can lie, within what the trims leave. */
  private void layOut(Stick stick) {
    Stretch stretch = stick.stock().stretch();
    Rational first = stretch.startsAt().plus(stretch.firstTrim());
    Rational last = stretch.startsAt().plus(stretch.length()).minus(stretch.lastTrim());
    Rational kerf = job.rules().kerf();
    Rational saw = first;
    Rational end = first;
    for (Stick.Placed piece : stick.placed()) {
      assertThat(piece.from()).isEqualTo(saw);
      assertThat(piece.length()).isEqualTo(piece.part().length());
      assertThat(piece.to()).isLessThanOrEqualTo(last);
      end = piece.to();
      saw = end.plus(kerf).minus(job.rules().nest());
    }
    assertThat(stick.placed()).isNotEmpty();
    Rational left = last.minus(end).minus(kerf);
    Stick.Offcut offcut = stick.offcut();
    assertThat(offcut.to()).isEqualTo(last);
    assertThat(offcut.length()).isEqualTo(left.signum() > 0 ? left : Rational.ZERO);
    assertThat(offcut.kept())
        .isEqualTo(left.signum() > 0 && left.compareTo(stick.stock().leastOffcut()) >= 0);
  }

  /** From where to where a piece reaches along one edge of the stick. */
  private record Reach(Rational from, Rational to) {}

  /**
   * Pieces are trapezoids, each longer at one edge of the stick by a nest at both ends. Their ends
   * are straight: what is a kerf apart along both edges is so everywhere between them.
   */
  private void keepApart(Stick stick) {
    for (boolean farEdge : new boolean[] {false, true}) {
      List<Reach> reaches = stick.placed().stream().map(piece -> reach(piece, farEdge)).toList();
      for (int right = 0; right < reaches.size(); right++) {
        Reach piece = reaches.get(right);
        assertThat(piece.from()).isLessThanOrEqualTo(piece.to());
        for (Reach left : reaches.subList(0, right)) {
          assertThat(left.to().plus(job.rules().kerf())).isLessThanOrEqualTo(piece.from());
        }
      }
    }
  }

  private Reach reach(Stick.Placed piece, boolean farEdge) {
    Rational nest = job.rules().nest();
    return piece.turned() == farEdge || nest.signum() == 0
        ? new Reach(piece.from(), piece.to())
        : new Reach(piece.from().plus(nest), piece.to().minus(nest));
  }

  /** Every part and every set is planned, too long or missing, as often as it is asked for. */
  private void countDemands() {
    Map<List<Object>, Integer> asked = new HashMap<>();
    job.demands().forEach(demand -> count(asked, demand, demand.count()));
    plan.tooLong().forEach(demand -> count(asked, demand, -demand.count()));
    plan.missing().forEach(demand -> count(asked, demand, -demand.count()));
    Set<Stick.SetCopy> copies = new HashSet<>();
    for (Stick stick : plan.sticks()) {
      int at = 0;
      while (at < stick.placed().size()) {
        Stick.Placed piece = stick.placed().get(at);
        if (piece.set().isEmpty()) {
          count(asked, piece.part(), -1);
          at++;
        } else {
          Stick.SetCopy copy = piece.set().orElseThrow();
          int end = at + copy.set().inOrder().size();
          assertThat(copies.add(copy)).isTrue();
          checkSet(copy, stick.placed().subList(at, end));
          count(asked, copy.set(), -1);
          at = end;
        }
      }
    }
    assertThat(asked.values()).allMatch(count -> count == 0);
    assertThat(plan.tooLong()).allMatch(this::fitsNothing);
  }

  /** Side by side, in its order. */
  private static void checkSet(Stick.SetCopy copy, List<Stick.Placed> pieces) {
    assertThat(copy.copy()).isBetween(1, copy.set().count());
    assertThat(pieces).extracting(Stick.Placed::part).isEqualTo(copy.set().inOrder());
    assertThat(pieces).extracting(Stick.Placed::set).containsOnly(Optional.of(copy));
  }

  private static void count(Map<List<Object>, Integer> counts, Demand demand, int times) {
    List<Object> key = List.of(demand.getClass(), demand.label(), lengths(demand));
    counts.merge(key, times, Integer::sum);
  }

  private static List<Rational> lengths(Demand demand) {
    return demand.inOrder().stream().map(Part::length).toList();
  }

  private boolean fitsNothing(Demand demand) {
    return job.stocks().stream().noneMatch(stock -> EveryWay.holds(job.rules(), stock, demand));
  }

  /** Numbered from 1 as they come, the same beside each other; the longest sticks first. */
  private void numberPatterns() {
    Map<List<Object>, Integer> numbers = new HashMap<>();
    int last = 0;
    for (Stick stick : plan.sticks()) {
      List<Rational> lengths = stick.placed().stream().map(Stick.Placed::length).toList();
      List<Object> pattern = List.of(stick.stock(), lengths);
      numbers.putIfAbsent(pattern, numbers.size() + 1);
      assertThat(stick.pattern()).isEqualTo(numbers.get(pattern));
      assertThat(stick.pattern()).isGreaterThanOrEqualTo(last);
      last = stick.pattern();
    }
    assertThat(plan.sticks())
        .extracting(stick -> stick.stock().stretch().usable())
        .isSortedAccordingTo(Comparator.reverseOrder());
  }

  private void countSticks() {
    Map<Stock, Integer> taken = new HashMap<>();
    plan.sticks().forEach(stick -> taken.merge(stick.stock(), 1, Integer::sum));
    Map<Stock, Integer> onHand = new HashMap<>();
    job.stocks().forEach(s -> onHand.merge(s, s.onHand().orElse(1_000_000), Integer::sum));
    taken.forEach(
        (stock, count) ->
            assertThat(count).as(stock.label()).isLessThanOrEqualTo(onHand.getOrDefault(stock, 0)));
  }

  private void addCosts() {
    Rational cost = Rational.ZERO;
    for (Stick stick : plan.sticks()) {
      cost = cost.plus(stick.stock().cost());
    }
    assertThat(plan.used()).isEqualTo(cost);
    if (plan.missing().isEmpty()) {
      assertThat(plan.bound()).isLessThanOrEqualTo(cost);
    }
    assertThat(plan.proven()).isEqualTo(plan.missing().isEmpty() && plan.bound().equals(cost));
  }
}
