package org.battenbook.number;

import java.math.BigInteger;
import org.battenbook.bound.Bound;
import org.jspecify.annotations.Nullable;

/**
 * An exact fraction. In lowest terms, with a positive denominator, zero as 0/1; held as two longs
 * whenever both fit, else as two big integers, so that equal numbers are always held alike.
 *
 * <p>{@link Long#MIN_VALUE} is left to the big form: then every small number can be negated. Long
 * arithmetic is checked beforehand and falls to big integers where it would overflow; results fall
 * back to longs when they fit again.
 *
 * <p>Sums and products after D. E. Knuth, <i>The Art of Computer Programming</i>, volume 2, section
 * 4.5.1: common factors are taken out before multiplying, so that intermediate values stay small.
 */
public final class Rational implements Real, Comparable<Rational> {

  /** The longest numerator or denominator, in binary digits. */
  public static final int MOST_BITS = Bound.BINARY_DIGITS.most();

  public static final Rational ZERO = new Rational(0, 1);
  public static final Rational ONE = new Rational(1, 1);

  /** Numerators and denominators up to this are exact as doubles. */
  private static final long EXACT_IN_DOUBLE = 1L << 53;

  private static final BigInteger LARGEST_SMALL = BigInteger.valueOf(Long.MAX_VALUE);

  /** The big form; never one that would fit two longs. */
  private record Pair(BigInteger numerator, BigInteger denominator) {}

  private final long numerator;
  private final long denominator;
  private final @Nullable Pair big;

  /** Two longs already in lowest terms. */
  private Rational(long numerator, long denominator) {
    this.numerator = numerator;
    this.denominator = denominator;
    this.big = null;
  }

  private Rational(Pair big) {
    this.numerator = 0;
    this.denominator = 0;
    this.big = big;
  }

  public static Rational of(long whole) {
    return whole == Long.MIN_VALUE
        ? of(BigInteger.valueOf(whole), BigInteger.ONE)
        : new Rational(whole, 1);
  }

  /**
   * The fraction of two whole numbers, reduced.
   *
   * @throws ArithmeticException if the denominator is zero
   */
  public static Rational of(long numerator, long denominator) {
    if (numerator == Long.MIN_VALUE || denominator == Long.MIN_VALUE) {
      return of(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
    }
    refuseZero(denominator);
    long common = Longs.gcd(Math.abs(numerator), Math.abs(denominator));
    long sign = denominator < 0 ? -1 : 1;
    return new Rational(sign * numerator / common, sign * denominator / common);
  }

  /**
   * The fraction of two whole numbers, reduced.
   *
   * @throws ArithmeticException if the denominator is zero, or past {@link #MOST_BITS}
   */
  public static Rational of(BigInteger numerator, BigInteger denominator) {
    refuseZero(denominator.signum());
    BigInteger common = numerator.gcd(denominator);
    BigInteger divisor = denominator.signum() < 0 ? common.negate() : common;
    return inLowestTerms(numerator.divide(divisor), denominator.divide(divisor));
  }

  /**
   * The exact value of a double.
   *
   * @throws IllegalArgumentException if it is infinite or no number
   */
  public static Rational exactly(double number) {
    if (!Double.isFinite(number)) {
      throw new IllegalArgumentException("not a number: " + number);
    }
    int exponent = Math.max(Math.getExponent(number), Double.MIN_EXPONENT) - 52;
    BigInteger significand = BigInteger.valueOf((long) Math.scalb(number, -exponent));
    return exponent >= 0
        ? of(significand.shiftLeft(exponent), BigInteger.ONE)
        : of(significand, BigInteger.ONE.shiftLeft(-exponent));
  }

  /**
   * Reads {@code 15}, {@code 3/8}, {@code 15 3/8}, {@code 15.5}, each with an optional minus sign
   * in front, digit by digit.
   *
   * @throws NumberFormatException if the text is not of that form
   * @throws ArithmeticException if a denominator is zero or the number past {@link #MOST_BITS}
   */
  public static Rational parse(String text) {
    return RationalReader.read(text);
  }

  /**
   * The largest number that divides both wholly: of 1/16 and 1/10 it is 1/80. Of zero and a number
   * it is that number. Never negative.
   */
  public static Rational gcd(Rational a, Rational b) {
    if (a.big == null && b.big == null) {
      long above = Longs.gcd(Math.abs(a.numerator), Math.abs(b.numerator));
      long part = a.denominator / Longs.gcd(a.denominator, b.denominator);
      if (Longs.productFits(part, b.denominator)) {
        return new Rational(above, above == 0 ? 1 : part * b.denominator);
      }
    }
    BigInteger common = a.numerator().gcd(b.numerator());
    BigInteger x = a.denominator();
    BigInteger y = b.denominator();
    return of(common, x.divide(x.gcd(y)).multiply(y));
  }

  private static void refuseZero(long denominator) {
    if (denominator == 0) {
      throw new ArithmeticException("division by zero");
    }
  }

  /** Chooses the form. */
  private static Rational inLowestTerms(BigInteger numerator, BigInteger denominator) {
    if (fitsSmall(numerator.abs()) && fitsSmall(denominator)) {
      return new Rational(numerator.longValue(), denominator.longValue());
    }
    refusePast(Math.max(numerator.bitLength(), denominator.bitLength()));
    return new Rational(new Pair(numerator, denominator));
  }

  private static boolean fitsSmall(BigInteger magnitude) {
    return magnitude.compareTo(LARGEST_SMALL) <= 0;
  }

  static void refusePast(long bits) {
    if (bits > MOST_BITS) {
      throw new ArithmeticException("the number grew past " + Bound.BINARY_DIGITS.shown());
    }
  }

  @Override
  public Real plus(Real that) {
    return that instanceof Rational rational ? plus(rational) : that.plus(this);
  }

  public Rational plus(Rational that) {
    if (big == null && that.big == null) {
      Rational sum = smallSum(numerator, denominator, that.numerator, that.denominator);
      if (sum != null) {
        return sum;
      }
    }
    return bigSum(that);
  }

  /** The sum a/b + c/d, or null where a step of it does not fit a long. */
  private static @Nullable Rational smallSum(long a, long b, long c, long d) {
    long common = b == d ? b : Longs.gcd(b, d);
    long left = d / common;
    long right = b / common;
    if (!Longs.productFits(a, left) || !Longs.productFits(c, right)) {
      return null;
    }
    long top = a * left + c * right;
    if (!Longs.sumFits(a * left, c * right) || top == Long.MIN_VALUE) {
      return null;
    }
    long rest = common == 1 ? 1 : Longs.gcd(Math.abs(top), common);
    return Longs.productFits(right, d / rest) ? new Rational(top / rest, right * (d / rest)) : null;
  }

  private Rational bigSum(Rational that) {
    BigInteger b = denominator();
    BigInteger d = that.denominator();
    BigInteger common = b.gcd(d);
    BigInteger right = b.divide(common);
    BigInteger top = numerator().multiply(d.divide(common)).add(that.numerator().multiply(right));
    BigInteger rest = top.gcd(common);
    return inLowestTerms(top.divide(rest), right.multiply(d.divide(rest)));
  }

  @Override
  public Real minus(Real that) {
    return plus(that.negate());
  }

  public Rational minus(Rational that) {
    return plus(that.negate());
  }

  @Override
  public Real times(Real that) {
    return that instanceof Rational rational ? times(rational) : that.times(this);
  }

  public Rational times(Rational that) {
    if (big == null && that.big == null) {
      Rational product = smallProduct(numerator, denominator, that.numerator, that.denominator);
      if (product != null) {
        return product;
      }
    }
    return bigProduct(numerator(), denominator(), that.numerator(), that.denominator());
  }

  /**
   * The product a/b * c/d, or null where it does not fit. Factors are cancelled crosswise first.
   */
  private static @Nullable Rational smallProduct(long a, long b, long c, long d) {
    long first = Longs.gcd(Math.abs(a), d);
    long second = Longs.gcd(Math.abs(c), b);
    long left = a / first;
    long right = c / second;
    long below = b / second;
    long above = d / first;
    boolean fits = Longs.productFits(left, right) && Longs.productFits(below, above);
    return fits && left * right != Long.MIN_VALUE
        ? new Rational(left * right, below * above)
        : null;
  }

  private static Rational bigProduct(BigInteger a, BigInteger b, BigInteger c, BigInteger d) {
    BigInteger first = a.gcd(d);
    BigInteger second = c.gcd(b);
    return inLowestTerms(
        a.divide(first).multiply(c.divide(second)), b.divide(second).multiply(d.divide(first)));
  }

  @Override
  public Real dividedBy(Real that) {
    return that instanceof Rational rational
        ? dividedBy(rational)
        : signum() == 0 && that.signum() != 0 ? ZERO : Approximate.of(this).dividedBy(that);
  }

  /**
   * The quotient.
   *
   * @throws ArithmeticException if {@code that} is zero
   */
  public Rational dividedBy(Rational that) {
    return times(that.reciprocal());
  }

  private Rational reciprocal() {
    refuseZero(signum());
    if (big == null) {
      return new Rational(numerator < 0 ? -denominator : denominator, Math.abs(numerator));
    }
    return signum() < 0
        ? inLowestTerms(big.denominator.negate(), big.numerator.negate())
        : inLowestTerms(big.denominator, big.numerator);
  }

  @Override
  public Rational negate() {
    return big == null
        ? new Rational(-numerator, denominator)
        : new Rational(new Pair(big.numerator.negate(), big.denominator));
  }

  @Override
  public Rational abs() {
    return signum() < 0 ? negate() : this;
  }

  /**
   * This number to a whole power; 0 to the power 0 is 1.
   *
   * @throws ArithmeticException for a negative power of zero, or past {@link #MOST_BITS}, told
   *     before it is worked out
   */
  @Override
  public Rational pow(int power) {
    if (power < 0) {
      return reciprocal().pow(Math.negateExact(power));
    }
    BigInteger top = numerator();
    BigInteger bottom = denominator();
    long leastBits = Math.max(top.abs().bitLength(), bottom.bitLength()) - 1L;
    refusePast(leastBits * power);
    return inLowestTerms(top.pow(power), bottom.pow(power));
  }

  @Override
  public int signum() {
    return big == null ? Long.signum(numerator) : big.numerator.signum();
  }

  @Override
  public int compareTo(Real that) {
    return that instanceof Rational rational ? compareTo(rational) : -that.compareTo(this);
  }

  @Override
  public int compareTo(Rational that) {
    if (big == null && that.big == null) {
      return Longs.compareProducts(numerator, that.denominator, that.numerator, denominator);
    }
    return numerator()
        .multiply(that.denominator())
        .compareTo(that.numerator().multiply(denominator()));
  }

  @Override
  public boolean isExact() {
    return true;
  }

  public boolean isWhole() {
    return big == null ? denominator == 1 : big.denominator.equals(BigInteger.ONE);
  }

  /** Whether both parts are longs, to be had from {@link #longNumerator} and its fellow. */
  public boolean isSmall() {
    return big == null;
  }

  /**
   * The numerator of a small number.
   *
   * @throws ArithmeticException if the number is not small
   */
  public long longNumerator() {
    refuseBig();
    return numerator;
  }

  /**
   * The denominator of a small number, positive.
   *
   * @throws ArithmeticException if the number is not small
   */
  public long longDenominator() {
    refuseBig();
    return denominator;
  }

  private void refuseBig() {
    if (big != null) {
      throw new ArithmeticException("the number does not fit two longs");
    }
  }

  public BigInteger numerator() {
    return big == null ? BigInteger.valueOf(numerator) : big.numerator;
  }

  /** The denominator, positive. */
  public BigInteger denominator() {
    return big == null ? BigInteger.valueOf(denominator) : big.denominator;
  }

  /** The greatest whole number that is not above this one. */
  public BigInteger floor() {
    return wholeBelow().numerator();
  }

  /** The least whole number that is not below this one. */
  public BigInteger ceiling() {
    return wholeAbove().numerator();
  }

  /** {@link #floor} as a rational, without big integers where it is small. */
  public Rational wholeBelow() {
    if (big == null) {
      return new Rational(Math.floorDiv(numerator, denominator), 1);
    }
    BigInteger[] parts = big.numerator.divideAndRemainder(big.denominator);
    BigInteger floor = parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
    return inLowestTerms(floor, BigInteger.ONE);
  }

  /** {@link #ceiling} as a rational. */
  public Rational wholeAbove() {
    return negate().wholeBelow().negate();
  }

  @Override
  public double toDouble() {
    return toNearestDouble();
  }

  /**
   * The nearest double, ties to even; infinite past its range. Where the parts are exact as doubles
   * their quotient is rounded once; else a quotient of 64 bits and more, its last bit set where it
   * is not exact, is.
   */
  public double toNearestDouble() {
    if (big == null && Math.abs(numerator) <= EXACT_IN_DOUBLE && denominator <= EXACT_IN_DOUBLE) {
      return (double) numerator / denominator;
    }
    BigInteger top = numerator().abs();
    int shift = 66 - top.bitLength() + denominator().bitLength();
    BigInteger[] parts =
        top.shiftLeft(Math.max(shift, 0))
            .divideAndRemainder(denominator().shiftLeft(Math.max(-shift, 0)));
    BigInteger sticky = parts[1].signum() == 0 ? parts[0] : parts[0].setBit(0);
    return signum() * Math.scalb(sticky.doubleValue(), -shift);
  }

  @Override
  public double bound() {
    return 0;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Rational that
        && numerator == that.numerator
        && denominator == that.denominator
        && (big == null ? that.big == null : big.equals(that.big));
  }

  @Override
  public int hashCode() {
    return big == null
        ? 31 * Long.hashCode(numerator) + Long.hashCode(denominator)
        : big.hashCode();
  }

  /** {@code n/d}, or {@code n} when it is whole. */
  @Override
  public String toString() {
    return isWhole() ? numerator().toString() : numerator() + "/" + denominator();
  }
}
