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
 * Solves a linear program that can be stopped. The solver only notices an interrupt of its thread,
 * so a long program runs in its own thread. That thread is interrupted and ends at its next pivot;
 * the plan goes on without it.
 */
final class LpSolver {
  /** Some ten milliseconds: what takes less is not worth a thread. */
  private static final long SHORT_STEPS = 1_000_000;

  private static final long MILLISECONDS_BETWEEN_QUESTIONS = 10;

  /** The first program is a long one in any case: it loads the solver. */
  private static volatile boolean isLoaded;

  private LpSolver() {}

  /** The answer; null where the plan was stopped before. */
  static Optimisation.@Nullable Result solve(
      Supplier<LinearSolver.Builder> program, long steps, Effort effort) {
    if (effort.isStoppedNow()) {
      return null;
    }
    return isLoaded && steps <= SHORT_STEPS
        ? program.get().build().solve()
        : solveBeside(program, effort);
  }

  private static Optimisation.@Nullable Result solveBeside(
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
        // The watch is asked again.
      } catch (InterruptedException interrupted) {
        // Kept for the search, which stops at it.
        Thread.currentThread().interrupt();
      } catch (ExecutionException mistake) {
        throw new IllegalStateException("the linear solver failed", mistake.getCause());
      }
    }
    task.cancel(true);
    return null;
  }
}
