package org.battenbook.plan.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Packed counts beside the plain arrays that they stand for. */
class PackedCountsTest {
  private static final long SEED = 20261127;

  private final Random random = new Random(SEED);

  @Test
  void packed_counts_add_and_compare_as_arrays_do() {
    for (int round = 0; round < 2_000; round++) {
      int largest = round % 40;
      int[] most = some(1 + random.nextInt(70), i -> random.nextInt(largest + 1));
      int[] a = some(most.length, i -> random.nextInt(most[i] + 1));
      int[] b = some(most.length, i -> random.nextInt(most[i] + 1));
      compare(most, a, b);
    }
  }

  private static int[] some(int length, IntUnaryOperator of) {
    return IntStream.range(0, length).map(of).toArray();
  }

  private static void compare(int[] most, int[] a, int[] b) {
    PackedCounts.Fields fields = new PackedCounts.Fields(most);
    PackedCounts one = fields.of(a);
    PackedCounts other = fields.of(b);
    String told = "seed " + SEED + ": " + Arrays.toString(most);
    boolean within = IntStream.range(0, most.length).allMatch(i -> a[i] <= b[i]);
    boolean join = IntStream.range(0, most.length).allMatch(i -> a[i] + b[i] <= most[i]);
    assertThat(one.isWithin(other)).as(told).isEqualTo(within);
    assertThat(one.mayJoin(other)).as(told).isEqualTo(join);
    assertThat(one.isNothing()).as(told).isEqualTo(Arrays.stream(a).sum() == 0);
    assertThat(some(most.length, one::of)).as(told).isEqualTo(a);
    if (join) {
      int[] sum = some(most.length, i -> a[i] + b[i]);
      assertThat(one.plus(other)).as(told).isEqualTo(fields.of(sum));
      assertThat(fields.of(sum).minus(one)).as(told).isEqualTo(other);
    }
  }
}
