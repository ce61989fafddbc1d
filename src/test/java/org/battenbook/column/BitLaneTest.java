package org.battenbook.column;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Against {@link BitSet}. */
class BitLaneTest {
  private static final long SEED = Long.getLong("seed", 20_260_314);
  private final Random random = new Random(SEED);

  @Test
  void logic_and_counts_are_those_of_a_bit_set() {
    for (int i = 0; i < 2_000; i++) {
      int rows = random.nextInt(200);
      BitSet a = anyBits(rows);
      BitSet b = anyBits(rows);
      BitLane left = lane(rows, a);
      BitLane right = lane(rows, b);

      BitSet both = (BitSet) a.clone();
      both.and(b);
      assertThat(left.and(right)).as("seed %d", SEED).isEqualTo(lane(rows, both));
      BitSet either = (BitSet) a.clone();
      either.or(b);
      assertThat(left.or(right)).as("seed %d", SEED).isEqualTo(lane(rows, either));
      BitSet other = (BitSet) a.clone();
      other.flip(0, rows);
      assertThat(left.not()).as("seed %d", SEED).isEqualTo(lane(rows, other));

      assertThat(left.count()).as("seed %d", SEED).isEqualTo(a.cardinality());
      assertThat(left.isAny()).as("seed %d", SEED).isEqualTo(!a.isEmpty());
      assertThat(left.isAll()).as("seed %d", SEED).isEqualTo(a.cardinality() == rows);
      for (int row = 0; row <= rows; row++) {
        assertThat(left.next(row)).as("seed %d", SEED).isEqualTo(a.nextSetBit(row));
      }
    }
  }

  @Test
  void a_constant_is_all_or_nothing() {
    assertThat(BitLane.constant(70, true).count()).isEqualTo(70);
    assertThat(BitLane.constant(70, false).isAny()).isFalse();
    assertThat(BitLane.constant(0, true).isAll()).isTrue();
  }

  private BitSet anyBits(int rows) {
    BitSet bits = new BitSet();
    double share = random.nextDouble();
    for (int row = 0; row < rows; row++) {
      bits.set(row, random.nextDouble() < share);
    }
    return bits;
  }

  private static BitLane lane(int rows, BitSet bits) {
    return BitLane.of(rows, bits::get);
  }
}
