package org.battenbook.number;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import org.junit.jupiter.api.Test;

/** Against {@link BigInteger}. */
class LongsTest {
  private final Samples samples = new Samples();

  @Test
  void a_sum_or_product_fits_exactly_when_the_big_one_does() {
    for (int i = 0; i < 100_000; i++) {
      long a = samples.anyLong();
      long b = samples.anyLong();
      BigInteger sum = BigInteger.valueOf(a).add(BigInteger.valueOf(b));
      BigInteger product = BigInteger.valueOf(a).multiply(BigInteger.valueOf(b));
      assertThat(Longs.sumFits(a, b)).as(say(a, b)).isEqualTo(sum.bitLength() < 64);
      assertThat(Longs.productFits(a, b)).as(say(a, b)).isEqualTo(product.bitLength() < 64);
    }
  }

  @Test
  void a_capped_sum_or_product_stops_at_the_largest_long() {
    BigInteger largest = BigInteger.valueOf(Long.MAX_VALUE);
    for (int i = 0; i < 100_000; i++) {
      long a = samples.anyLong() & Long.MAX_VALUE;
      long b = samples.anyLong() & Long.MAX_VALUE;
      BigInteger sum = BigInteger.valueOf(a).add(BigInteger.valueOf(b));
      BigInteger product = BigInteger.valueOf(a).multiply(BigInteger.valueOf(b));
      assertThat(Longs.cappedSum(a, b)).as(say(a, b)).isEqualTo(sum.min(largest).longValue());
      assertThat(Longs.cappedProduct(a, b))
          .as(say(a, b))
          .isEqualTo(product.min(largest).longValue());
    }
  }

  @Test
  void products_compare_as_the_big_ones_do() {
    for (int i = 0; i < 100_000; i++) {
      long a = samples.anyLong();
      long b = samples.anyLong();
      long c = i % 3 == 0 ? b : samples.anyLong();
      long d = i % 3 == 0 ? a : samples.anyLong();
      BigInteger left = BigInteger.valueOf(a).multiply(BigInteger.valueOf(b));
      BigInteger right = BigInteger.valueOf(c).multiply(BigInteger.valueOf(d));
      assertThat(Integer.signum(Longs.compareProducts(a, b, c, d)))
          .as(say(a, b) + " against " + say(c, d))
          .isEqualTo(left.compareTo(right));
    }
  }

  @Test
  void the_common_divisor_is_the_big_one() {
    for (int i = 0; i < 100_000; i++) {
      long a = samples.anyLong() & Long.MAX_VALUE;
      long b = samples.anyLong() & Long.MAX_VALUE;
      assertThat(Longs.gcd(a, b))
          .as(say(a, b))
          .isEqualTo(BigInteger.valueOf(a).gcd(BigInteger.valueOf(b)).longValueExact());
    }
  }

  private String say(long a, long b) {
    return a + " and " + b + ", seed " + samples.seed;
  }
}
