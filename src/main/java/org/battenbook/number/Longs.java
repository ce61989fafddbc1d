package org.battenbook.number;

/** The arithmetic of longs that must never wrap: what overflows is asked for beforehand. */
public final class Longs {
  private Longs() {}

  /** Whether {@code a * b} fits a long. The high word must be the sign of the low one. */
  public static boolean productFits(long a, long b) {
    return Math.multiplyHigh(a, b) == (a * b) >> 63;
  }

  /** Whether {@code a + b} fits a long. It does not where both differ in sign from the sum. */
  public static boolean sumFits(long a, long b) {
    long sum = a + b;
    return ((a ^ sum) & (b ^ sum)) >= 0;
  }

  /** The product of two numbers that are not negative, {@link Long#MAX_VALUE} where it is more. */
  public static long cappedProduct(long a, long b) {
    return productFits(a, b) ? a * b : Long.MAX_VALUE;
  }

  /** The sum of two numbers that are not negative, {@link Long#MAX_VALUE} where it is more. */
  public static long cappedSum(long a, long b) {
    return sumFits(a, b) ? a + b : Long.MAX_VALUE;
  }

  /**
   * The sign of {@code a * b - c * d}, exact for all longs: the products are compared as 128 bits.
   */
  public static int compareProducts(long a, long b, long c, long d) {
    int high = Long.compare(Math.multiplyHigh(a, b), Math.multiplyHigh(c, d));
    return high != 0 ? high : Long.compareUnsigned(a * b, c * d);
  }

  /**
   * The greatest common divisor of two numbers that are not negative; of 0 and b it is b. Binary: a
   * shift costs less than a division.
   */
  public static long gcd(long a, long b) {
    if (a == 0 || b == 0) {
      return a | b;
    }
    int twos = Long.numberOfTrailingZeros(a | b);
    long odd = a >> Long.numberOfTrailingZeros(a);
    long rest = b;
    while (rest != 0) {
      rest >>= Long.numberOfTrailingZeros(rest);
      long smaller = Math.min(odd, rest);
      rest = Math.abs(odd - rest);
      odd = smaller;
    }
    return odd << twos;
  }
}
