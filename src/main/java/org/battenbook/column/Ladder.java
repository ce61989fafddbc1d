package org.battenbook.column;

import org.jspecify.annotations.Nullable;

/**
 * A kernel for two lanes, from the narrowest lane to the widest. Each rung is tried where both
 * lanes can stand on it; it gives null where its result might not fit. The last one, row by row,
 * always gives a result.
 */
record Ladder(
    Rung<LongLane> longs, Rung<WideLane> wides, Rung<RatioLane> ratios, Rung<NumberLane> rows) {

  /** One rung: null if the result might not fit. */
  interface Rung<L> {
    @Nullable NumberLane step(L left, L right);
  }

  NumberLane climb(NumberLane left, NumberLane right) {
    if (left.rows() != right.rows()) {
      throw new IllegalArgumentException(left.rows() + " rows beside " + right.rows());
    }
    NumberLane result = longStep(left.asLongs(), right.asLongs());
    if (result == null) {
      result = step(wides, left.asWide(), right.asWide());
    }
    if (result == null) {
      result = step(ratios, left.asRatios(), right.asRatios());
    }
    return result == null ? lastStep(left, right) : result;
  }

  /** A second time with bounds looked up, which those told from operands may exceed by far. */
  private @Nullable NumberLane longStep(@Nullable LongLane left, @Nullable LongLane right) {
    NumberLane result = step(longs, left, right);
    return result != null || left == null || right == null
        ? result
        : longs.step(left.tight(), right.tight());
  }

  private static <L> @Nullable NumberLane step(Rung<L> rung, @Nullable L left, @Nullable L right) {
    return left == null || right == null ? null : rung.step(left, right);
  }

  private NumberLane lastStep(NumberLane left, NumberLane right) {
    NumberLane result = rows.step(left, right);
    if (result == null) {
      throw new IllegalStateException("the last rung gave nothing");
    }
    return result;
  }
}
