package org.battenbook.plan.stick;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.battenbook.number.Rational;
import org.battenbook.plan.PlanWatch;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Published instances, each proven to need as many sticks as its source says. All of them with
 * {@code -Pslow}; without, those of {@link #SLOW} get less work than a proof takes, and may say
 * that they are not proven, but never anything that is not so.
 */
class PublishedSticksTest {
  /** They take from three to twenty seconds each, the others hardly one. */
  private static final Set<String> SLOW =
      Set.of("HARD0", "Hard28_BPP13", "Hard28_BPP14", "Hard28_BPP178");

  private static final long MUCH_WORK = 10_000_000_000L;
  private static final long LITTLE_WORK = 20_000_000;

  private static boolean isSlowToo() {
    return System.getProperty("slow") != null;
  }

  @TestFactory
  Stream<DynamicTest> the_fewest_sticks_are_found_and_proven() {
    return PublishedSticks.all().stream()
        .filter(known -> isSlowToo() || !SLOW.contains(known.name()))
        .map(known -> dynamicTest(known.name(), () -> proves(known)));
  }

  private static void proves(PublishedSticks.Known known) {
    StickJob job = PublishedSticks.job(known.name());
    StickPlan plan = PlanCheck.checked(job, StickPlanner.plan(job, MUCH_WORK, PlanWatch.NONE));
    assertThat(plan.sticks()).hasSize(known.optimum());
    assertThat(plan.used()).isEqualTo(Rational.of(known.optimum()));
    assertThat(plan.proven()).isTrue();
  }

  @TestFactory
  Stream<DynamicTest> with_little_work_nothing_false_is_said() {
    return PublishedSticks.all().stream()
        .map(known -> dynamicTest(known.name(), () -> saysNothingFalse(known)));
  }

  private static void saysNothingFalse(PublishedSticks.Known known) {
    StickJob job = PublishedSticks.job(known.name());
    StickPlan plan = PlanCheck.checked(job, StickPlanner.plan(job, LITTLE_WORK, PlanWatch.NONE));
    Rational optimum = Rational.of(known.optimum());
    assertThat(plan.used()).isGreaterThanOrEqualTo(optimum);
    assertThat(plan.bound()).isLessThanOrEqualTo(optimum);
  }

  /**
   * 94 wide, with widths of halves as they are published in the documentation of a modelling
   * language (cutting-stock example of FICO Xpress Mosel).
   */
  @Test
  void widths_of_halves_are_cut_exactly() {
    StickJob job =
        new StickJob(
            List.of(
                new Part("17", Rational.of(17), 150),
                new Part("21", Rational.of(21), 96),
                new Part("22.5", Rational.parse("22.5"), 48),
                new Part("24", Rational.of(24), 108),
                new Part("29.5", Rational.parse("29.5"), 227)),
            List.of(Stock.bought("roll", Rational.of(94), Rational.ONE)),
            StickRules.bare());
    StickPlan plan = PlanCheck.checked(job, StickPlanner.plan(job));
    assertThat(plan.sticks()).hasSize(161);
    assertThat(plan.proven()).isTrue();
  }
}
