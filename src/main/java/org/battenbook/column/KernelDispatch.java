package org.battenbook.column;

import org.jspecify.annotations.Nullable;

/**
 * The kernels of one operation on two lanes, one for each width of numbers. The narrowest that both
 * lanes fit runs first. A kernel whose result may not fit its width returns null, and the next one
 * runs. The last kernel goes row by row and always has a result.
 */
record KernelDispatch(
    Kernel<LongLane> longs,
    Kernel<WideLane> wides,
    Kernel<RatioLane> ratios,
    Kernel<NumberLane> rows) {

  /** A kernel for lanes of one width. */
  interface Kernel<L> {
    /** The result; null if it may not fit this width. */
    @Nullable NumberLane run(L left, L right);
  }

  /**
   * The result of the narrowest kernel that has one.
   *
   * @throws IllegalArgumentException if the lanes differ in their numbers of rows
   */
  NumberLane run(NumberLane left, NumberLane right) {
    if (left.rows() != right.rows()) {
      throw new IllegalArgumentException(left.rows() + " rows and " + right.rows());
    }
    NumberLane result = runLongs(left.asLongs(), right.asLongs());
    if (result == null) {
      result = run(wides, left.asWide(), right.asWide());
    }
    if (result == null) {
      result = run(ratios, left.asRatios(), right.asRatios());
    }
    return result == null ? runRows(left, right) : result;
  }

  /**
   * Runs on longs, if needed a second time: the bounds of a lane are estimates, and the second time
   * they are exact.
   */
  private @Nullable NumberLane runLongs(@Nullable LongLane left, @Nullable LongLane right) {
    NumberLane result = run(longs, left, right);
    return result != null || left == null || right == null
        ? result
        : longs.run(left.tight(), right.tight());
  }

  private static <L> @Nullable NumberLane run(
      Kernel<L> kernel, @Nullable L left, @Nullable L right) {
    return left == null || right == null ? null : kernel.run(left, right);
  }

  private NumberLane runRows(NumberLane left, NumberLane right) {
    NumberLane result = rows.run(left, right);
    if (result == null) {
      throw new IllegalStateException("the kernel for rows has no result");
    }
    return result;
  }
}
