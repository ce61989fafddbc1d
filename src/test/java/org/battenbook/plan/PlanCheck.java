package org.battenbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import org.battenbook.number.Rational;

/**
 * Checks a plan against its job, knowing nothing of how it was found: each stick is laid out anew
 * with rationals, parts and sticks are counted, and costs added up.
 */
final class PlanCheck {
  private final StickJob job;
  private final StickPlan plan;

  private PlanCheck(StickJob job, StickPlan plan) {
    this.job = job;
    this.plan = plan;
  }

  /** Fails where the plan is not what the job asks for; gives it back else. */
  static StickPlan checked(StickJob job, StickPlan plan) {
    PlanCheck check = new PlanCheck(job, plan);
    plan.sticks().forEach(check::layOut);
    check.countParts();
    check.countSticks();
    check.addCosts();
    return plan;
  }

  /** Parts one after the other, a kerf between them, within what the trims leave. */
  private void layOut(Stick stick) {
    StickRules rules = job.rules();
    Rational end = stick.stock().length().minus(rules.lastTrim());
    Rational saw = rules.firstTrim();
    for (Stick.Placed part : stick.parts()) {
      assertThat(part.from()).isEqualTo(saw);
      assertThat(part.length()).isGreaterThan(Rational.ZERO);
      assertThat(part.to()).isLessThanOrEqualTo(end);
      saw = part.to().plus(rules.kerf());
    }
    assertThat(stick.parts()).isNotEmpty();
    Rational left = end.compareTo(saw) > 0 ? end.minus(saw) : Rational.ZERO;
    assertThat(stick.offcut()).isEqualTo(left);
    assertThat(stick.kept())
        .isEqualTo(left.signum() > 0 && left.compareTo(rules.leastOffcut()) >= 0);
  }

  private record Piece(String label, Rational length) {}

  private void countParts() {
    Map<Piece, Integer> asked = new HashMap<>();
    job.parts().forEach(part -> count(asked, part, 1));
    plan.sticks().stream()
        .flatMap(stick -> stick.parts().stream())
        .forEach(part -> asked.merge(new Piece(part.label(), part.length()), -1, Integer::sum));
    plan.tooLong().forEach(part -> count(asked, part, -1));
    plan.missing().forEach(part -> count(asked, part, -1));
    assertThat(asked.values()).allMatch(count -> count == 0);
    assertThat(plan.tooLong()).allMatch(this::fitsNothing);
  }

  private static void count(Map<Piece, Integer> pieces, Part part, int sign) {
    pieces.merge(new Piece(part.label(), part.length()), sign * part.count(), Integer::sum);
  }

  private boolean fitsNothing(Part part) {
    return job.stocks().stream()
        .noneMatch(stock -> part.length().compareTo(job.rules().usable(stock)) <= 0);
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
