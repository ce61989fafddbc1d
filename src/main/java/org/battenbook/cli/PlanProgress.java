package org.battenbook.cli;

import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import org.battenbook.number.Rational;
import org.battenbook.plan.PlanWatch;

/**
 * Tells a person who looks on how far a plan is that takes over a second, and lets Enter end it
 * with the best that was found. Elsewhere it does nothing, so that nothing depends on the clock.
 */
final class PlanProgress implements PlanWatch {
  private static final long QUIET = TimeUnit.SECONDS.toNanos(1);
  private static final long BETWEEN = TimeUnit.MILLISECONDS.toNanos(100);

  private final Terminal terminal;
  private final ProgressLine line;
  private final InputStream keys;
  private final LongSupplier clock;
  private final String what;
  private final long start;
  private long lastLook;
  private String saved = "";
  private boolean isEnded;

  /**
   * Looks on at one plan.
   *
   * @param keys what the person types, line by line
   * @param clock in nanoseconds
   * @param what is planned
   */
  PlanProgress(
      Terminal terminal, ProgressLine line, InputStream keys, LongSupplier clock, String what) {
    this.terminal = terminal;
    this.line = line;
    this.keys = keys;
    this.clock = clock;
    this.what = what;
    this.start = clock.getAsLong();
    this.lastLook = start;
  }

  @Override
  public void found(Rational used, Rational bound) {
    if (used.signum() > 0 && bound.compareTo(used) < 0) {
      double share = used.minus(bound).dividedBy(used).toDouble();
      saved = String.format(Locale.ROOT, ", a better plan could save up to %.1f %%", 100 * share);
    }
  }

  @Override
  public boolean isCancelled() {
    if (terminal.interactive() && clock.getAsLong() - lastLook >= BETWEEN) {
      lastLook = clock.getAsLong();
      isEnded |= enterWasPressed();
      if (lastLook - start >= QUIET) {
        line.words("planning %s%s; press Enter to use the best plan found".formatted(what, saved));
      }
    }
    return isEnded;
  }

  private boolean enterWasPressed() {
    try {
      int typed = keys.available();
      return typed > 0 && keys.skip(typed) > 0;
    } catch (IOException unreadable) {
      return false;
    }
  }
}
