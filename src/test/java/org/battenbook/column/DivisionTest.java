package org.battenbook.column;

import static org.assertj.core.api.Assertions.assertThat;

import org.battenbook.number.Rational;
import org.battenbook.number.Samples;
import org.junit.jupiter.api.Test;

/** Against {@link Math#floorDiv(long, long)}. */
class DivisionTest {
  private final Samples samples = new Samples();

  @Test
  void a_division_by_a_constant_is_the_whole_division_below_it() {
    for (int i = 0; i < 5_000; i++) {
      long divisor = 2 + ((samples.anyLong() & Long.MAX_VALUE) % Division.ByConstant.MOST);
      Division division = new Division.ByConstant(divisor);
      for (int j = 0; j < 10; j++) {
        long number = samples.anyLong() >> 1;
        floors(division, divisor, number);
        long near = number / divisor * divisor;
        floors(division, divisor, near);
        floors(division, divisor, near - 1);
        floors(division.doubled(), 2 * divisor, number);
      }
    }
  }

  private void floors(Division division, long divisor, long number) {
    assertThat(division.floor(number, 0))
        .as("%d by %d, seed %d", number, divisor, samples.seed)
        .isEqualTo(Math.floorDiv(number, divisor));
  }

  @Test
  void small_divisors_go_through_all_small_numbers() {
    for (long divisor = 2; divisor < 70; divisor++) {
      Division division = new Division.ByConstant(divisor);
      for (long number = -300; number < 300; number++) {
        floors(division, divisor, number);
      }
    }
  }

  @Test
  void every_row_has_its_own_divisor() {
    LongLane divisors = new LongLane(new long[] {1, 2, 3}, Rational.ONE, 3);
    Division division = new Division.ByLane(divisors);
    assertThat(division.floor(-7, 0)).isEqualTo(-7);
    assertThat(division.floor(-7, 1)).isEqualTo(-4);
    assertThat(division.doubled().floor(-7, 2)).isEqualTo(-2);
    assertThat(division.doubled().most()).isEqualTo(6);
  }
}
