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

  @ParameterizedTest(name = "{0} materials that ask for {1} s have {2} s each")
  @CsvSource({"0, 10, 10", "1, 300, 300", "30, 10, 10", "60, 10, 5", "2, 300, 150", "60, 1, 1"})
  void materials_have_an_even_share_at_most(int materials, int asked, int allowed)
      throws NotPlannable {
    PlanningLimit limit = new PlanningLimit(PlanningTime.USUAL, materials);
    assertThat(limit.allowed(seconds(asked))).isEqualTo(seconds(allowed));
  }

  @ParameterizedTest
  @CsvSource({"5 min, 301", "20 min, 1201"})
  void a_workbook_asks_for_no_more_than_is_allowed(String most, int asked) {
    PlanningLimit limit = new PlanningLimit(PlanningTime.of(most), 1);
    assertThatThrownBy(() -> limit.allowed(seconds(asked)))
        .isInstanceOf(NotPlannable.class)
        .hasMessageContaining("at most " + most);
  }
}
