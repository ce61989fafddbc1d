package org.battenbook.workbook;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.jspecify.annotations.Nullable;

/**
 * Runs work on a stack that is deep enough for ten thousand lines that each need the next. Kinds
 * are found on demand, one call inside another. The stack is reserved, and hardly ever used.
 */
final class DeepStack {
  private static final long BYTES = 256L << 20;

  private DeepStack() {}

  /** Runs the work, and returns or throws what the work does. */
  static <T> T call(Callable<T> work) {
    FutureTask<T> task = new FutureTask<>(work);
    Thread thread = new Thread(null, task, "battenbook", BYTES);
    thread.setDaemon(true);
    thread.start();
    try {
      return task.get();
    } catch (ExecutionException failed) {
      throw rethrown(failed.getCause());
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while a workbook was read", interrupted);
    }
  }

  private static RuntimeException rethrown(@Nullable Throwable cause) {
    if (cause instanceof Error error) {
      throw error;
    }
    return cause instanceof RuntimeException runtime ? runtime : new IllegalStateException(cause);
  }
}
