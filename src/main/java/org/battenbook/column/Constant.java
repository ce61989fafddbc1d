package org.battenbook.column;

import java.util.Arrays;
import java.util.function.BinaryOperator;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.jspecify.annotations.Nullable;

/** One number for all rows: to multiply by it or divide by it costs nothing per row. */
final class Constant extends NumberLane {
  final Real number;
  private final int rows;

  Constant(Real number, int rows) {
    this.number = number;
    this.rows = rows;
  }

  /** The operation on two constants, or null if one is not. */
  static @Nullable Constant both(NumberLane a, NumberLane b, BinaryOperator<Real> operation) {
    return a instanceof Constant left && b instanceof Constant right
        ? new Constant(operation.apply(left.number, right.number), left.rows)
        : null;
  }

  @Override
  public int rows() {
    return rows;
  }

  @Override
  public Real at(int row) {
    return number;
  }

  /** One tick of the number's own size, or minus one, or none. */
  @Override
  @Nullable LongLane asLongs() {
    if (!(number instanceof Rational exact)) {
      return null;
    }
    long[] ticks = new long[rows];
    Arrays.fill(ticks, exact.signum());
    Rational tick = exact.signum() == 0 ? Rational.ONE : exact.abs();
    return new LongLane(ticks, tick, Math.abs(exact.signum()));
  }

  @Override
  @Nullable WideLane asWide() {
    LongLane longs = asLongs();
    return longs == null ? null : longs.asWide();
  }

  @Override
  @Nullable RatioLane asRatios() {
    LongLane longs = asLongs();
    return longs == null ? null : longs.asRatios();
  }

  @Override
  boolean isExact() {
    return number.isExact();
  }

  @Override
  public Constant negate() {
    return new Constant(number.negate(), rows);
  }

  @Override
  public Constant abs() {
    return new Constant(number.abs(), rows);
  }

  @Override
  public BitLane negativeRows() {
    return BitLane.constant(rows, number.signum() < 0);
  }

  @Override
  public BitLane zeroRows() {
    return BitLane.constant(rows, number.signum() == 0);
  }
}
