package org.battenbook.column;

import java.math.BigInteger;
import java.util.Objects;

/** Whole divisions of many numbers, each by the divisor of its row, greater than zero. */
sealed interface Division {

  /** The greatest whole number not above {@code number / at(row)}. */
  long floor(long number, int row);

  /** The divisor of a row. */
  long at(int row);

  /** No divisor is greater. */
  long most();

  /** No quotient, rounded up, is greater where no number is greater than this. */
  long mostQuotient(long mostNumber);

  /** The same with every divisor doubled. */
  Division doubled();

  /**
   * By one divisor for all rows: multiplied by its reciprocal instead, as T. Granlund and P.
   * Montgomery, "Division by invariant integers using multiplication" (1994), but with a reciprocal
   * of 63 bits, which may give one too few or one too many; the remainder puts that right.
   */
  final class ByConstant implements Division {
    /** The largest divisor for which remainders fit, doubled and out by one divisor. */
    static final long MOST = 1L << 60;

    private final long divisor;

    /** 2^(63 + log) / divisor, where 2^log is the highest bit of the divisor. */
    private final long reciprocal;

    private final int shift;

    /**
     * Prepares the reciprocal.
     *
     * @param divisor from 2 to twice {@link #MOST}
     */
    ByConstant(long divisor) {
      int log = 63 - Long.numberOfLeadingZeros(divisor);
      BigInteger exact = BigInteger.ONE.shiftLeft(63 + log).divide(BigInteger.valueOf(divisor));
      this.divisor = divisor;
      this.reciprocal = exact.bitLength() > 63 ? Long.MAX_VALUE : exact.longValue();
      this.shift = log - 1;
    }

    @Override
    public long floor(long number, int row) {
      long estimate = Math.multiplyHigh(number, reciprocal) >> shift;
      long rest = number - estimate * divisor;
      return estimate + (rest >> 63) + ((divisor - 1 - rest) >>> 63);
    }

    @Override
    public long at(int row) {
      return divisor;
    }

    @Override
    public long most() {
      return divisor;
    }

    @Override
    public long mostQuotient(long mostNumber) {
      return mostNumber / divisor + 1;
    }

    @Override
    public Division doubled() {
      return new ByConstant(2 * divisor);
    }
  }

  /** By a divisor of its own for every row. */
  final class ByLane implements Division {
    private final LongLane divisors;

    ByLane(LongLane divisors) {
      this.divisors = divisors;
    }

    @Override
    public long floor(long number, int row) {
      return Math.floorDiv(number, divisors.ticks[row]);
    }

    @Override
    public long at(int row) {
      return divisors.ticks[row];
    }

    @Override
    public long most() {
      return divisors.most;
    }

    @Override
    public long mostQuotient(long mostNumber) {
      return mostNumber;
    }

    /** The doubled divisors fit: the caller has made room for four times the largest. */
    @Override
    public Division doubled() {
      LongLane doubled = divisors.inTick(divisors.tick(), 2);
      return new ByLane(Objects.requireNonNull(doubled));
    }
  }
}
