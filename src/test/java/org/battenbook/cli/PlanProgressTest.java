package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.atomic.AtomicLong;
import org.battenbook.number.Rational;
import org.junit.jupiter.api.Test;

/** What a person sees of a plan that takes long, and how Enter ends it. */
class PlanProgressTest {
  private final ByteArrayOutputStream shown = new ByteArrayOutputStream();
  private final AtomicLong now = new AtomicLong();

  private PlanProgress progress(boolean interactive, InputStream keys) {
    PrintStream out = new PrintStream(shown, true, StandardCharsets.UTF_8);
    Terminal terminal = new Terminal(out, out, StandardCharsets.UTF_8, interactive, false);
    return new PlanProgress(terminal, new ProgressLine(terminal), keys, now::get, "rail: ash cap");
  }

  private boolean after(PlanProgress progress, long milliseconds) {
    now.addAndGet(milliseconds * 1_000_000);
    return progress.isCancelled();
  }

  @Test
  void nothing_is_shown_within_the_first_second() {
    PlanProgress progress = progress(true, InputStream.nullInputStream());
    assertThat(after(progress, 900)).isFalse();
    assertThat(shown.toString(StandardCharsets.UTF_8)).isEmpty();
  }

  @Test
  void then_it_says_how_far_from_the_best_the_plan_may_be() {
    PlanProgress progress = progress(true, InputStream.nullInputStream());
    progress.found(Rational.of(5), Rational.of(4));
    assertThat(after(progress, 1_100)).isFalse();
    assertThat(shown.toString(StandardCharsets.UTF_8))
        .contains(
            "planning rail: ash cap, a better plan could save up to 20.0 %; press Enter to use the best");
  }

  @Test
  void enter_ends_it() {
    PlanProgress progress = progress(true, new ByteArrayInputStream(new byte[] {'\n'}));
    assertThat(after(progress, 150)).isTrue();
    assertThat(after(progress, 1)).isTrue();
  }

  @Test
  void away_from_a_terminal_neither_the_clock_nor_what_is_typed_matters() {
    PlanProgress progress = progress(false, new ByteArrayInputStream(new byte[] {'\n'}));
    assertThat(after(progress, 60_000)).isFalse();
    assertThat(shown.toString(StandardCharsets.UTF_8)).isEmpty();
  }
}
