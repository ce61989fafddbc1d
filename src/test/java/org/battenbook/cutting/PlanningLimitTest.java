package org.battenbook.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.battenbook.number.Rational;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** All plans of a job have a time together, however many materials there are. */
class PlanningLimitTest {
  private static Rational seconds(int number) {
    return Rational.of(number, 3600);
  }

  @ParameterizedTest(name = "after {0} s, {1} materials that ask for {2} s have {3} s each")
  @CsvSource({
    "0, 0, 10, 10",
    "0, 1, 300, 300",
    "0, 30, 10, 10",
    "0, 60, 10, 5",
    "0, 2, 300, 150",
    "0, 60, 1, 1",
    "240, 12, 10, 5",
    "300, 1, 10, 3",
    "9000, 3, 10, 1"
  })
  void materials_have_an_even_share_at_most(int before, int materials, int asked, int allowed)
      throws NotPlannable {
    PlanningLimit limit = new PlanningLimit(PlanningTime.USUAL, seconds(before), materials);
    assertThat(limit.allowed(seconds(asked))).isEqualTo(seconds(allowed));
  }

  @ParameterizedTest
  @CsvSource({"5 min, 301", "20 min, 1201"})
  void a_workbook_asks_for_no_more_than_is_allowed(String most, int asked) {
    PlanningLimit limit = new PlanningLimit(PlanningTime.of(most), Rational.ZERO, 1);
    assertThatThrownBy(() -> limit.allowed(seconds(asked)))
        .isInstanceOf(NotPlannable.class)
        .hasMessageContaining("at most " + most);
  }
}
