package org.battenbook.plan.stick;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import org.battenbook.plan.Effort;
import org.jspecify.annotations.Nullable;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.linear.LinearSolver;

/**
 * Solves linear programs that can be stopped. The solver only reacts to an interrupt of its thread,
 * so a long program runs in a thread of its own. To stop it, that thread is interrupted. It ends at
 * its next pivot; the plan does not wait for it.
 */
final class LpSolver {
  /** About ten milliseconds; a shorter program does not need its own thread. */
  private static final long SHORT_STEPS = 1_000_000;

  private static final long MILLISECONDS_BETWEEN_QUESTIONS = 10;

  /** Whether the solver's classes are loaded. The first program loads them, so it takes long. */
  private static volatile boolean isLoaded;

  private LpSolver() {}

  /**
   * Solves a linear program.
   *
   * @param steps how long it takes, in steps of effort; they are not spent here
   * @return null if the plan is stopped first
   * @throws IllegalStateException if the solver fails
   */
  static Optimisation.@Nullable Result solve(
      Supplier<LinearSolver.Builder> program, long steps, Effort effort) {
    if (effort.isStoppedNow()) {
      return null;
    }
    return isLoaded && steps <= SHORT_STEPS
        ? program.get().build().solve()
        : solveInThread(program, effort);
  }

  private static Optimisation.@Nullable Result solveInThread(
      Supplier<LinearSolver.Builder> program, Effort effort) {
    FutureTask<Optimisation.Result> task = new FutureTask<>(() -> program.get().build().solve());
    Thread thread = new Thread(task, "linear program");
    thread.setDaemon(true);
    thread.start();
    while (!effort.isStoppedNow()) {
      try {
        Optimisation.Result result =
            task.get(MILLISECONDS_BETWEEN_QUESTIONS, TimeUnit.MILLISECONDS);
        isLoaded = true;
        return result;
      } catch (TimeoutException goesOn) {
        // The loop asks the watch again.
      } catch (InterruptedException interrupted) {
        // Set it again: the search checks it and stops.
        Thread.currentThread().interrupt();
      } catch (ExecutionException mistake) {
        throw new IllegalStateException("the linear solver failed", mistake.getCause());
      }
    }
    task.cancel(true);
    return null;
  }
}
