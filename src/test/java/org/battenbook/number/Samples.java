package org.battenbook.number;

import java.math.BigInteger;
import java.util.List;
import java.util.Random;

/**
 * Seeded numbers for laws: small fractions as they occur, longs at the edges of overflow, and
 * numbers that need big integers. A law says the seed when it fails; {@code -Dseed=N} sets it.
 */
public final class Samples {
  private static final List<Long> EDGES =
      List.of(
          Long.MAX_VALUE,
          Long.MAX_VALUE - 1,
          Long.MIN_VALUE,
          Long.MIN_VALUE + 1,
          1L << 62,
          1L << 32,
          (1L << 32) - 1,
          (1L << 31) + 1,
          3_037_000_499L,
          3_037_000_500L,
          6_074_001_000L,
          4_611_686_018_427_387_903L);

  public final long seed = Long.getLong("seed", 20_260_314);
  private final Random random = new Random(seed);

  public Random random() {
    return random;
  }

  /** A long: small, at an edge, or anywhere. */
  public long anyLong() {
    return switch (random.nextInt(4)) {
      case 0 -> random.nextInt(41) - 20;
      case 1 -> EDGES.get(random.nextInt(EDGES.size())) * (random.nextBoolean() ? 1 : -1);
      case 2 -> random.nextInt();
      default -> random.nextLong() >> random.nextInt(40);
    };
  }

  public long anyLongButZero() {
    long number = anyLong();
    return number == 0 ? 1 : number;
  }

  /** A whole number, one in eight past what a long holds. */
  public BigInteger anyWhole() {
    return random.nextInt(8) == 0
        ? new BigInteger(65 + random.nextInt(80), random).multiply(BigInteger.valueOf(anyLong()))
        : BigInteger.valueOf(anyLong());
  }

  public Rational anyRational() {
    BigInteger denominator = anyWhole();
    return Rational.of(anyWhole(), denominator.signum() == 0 ? BigInteger.TWO : denominator);
  }

  public Rational anyRationalButZero() {
    Rational number = anyRational();
    return number.signum() == 0 ? Rational.of(3, 8) : number;
  }

  /** A length as people write them: sixty-fourths, or tenths of a millimeter, in inches. */
  public Rational anyLength() {
    long count = random.nextInt(200_000) - 100_000L;
    return random.nextBoolean() ? Rational.of(count, 64) : Rational.of(count, 254);
  }
}
