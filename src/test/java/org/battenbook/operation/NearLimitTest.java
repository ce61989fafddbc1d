package org.battenbook.operation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Where a spreadsheet's doubles come to the exact result of a comparison or a rounding, and where a
 * value lies too near to a limit for that. The guard of a comparison is 0.000,000,1 in base units,
 * that of a rounding 0.000,000,6 of a step.
 */
class NearLimitTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          =  | 1 ; 1                               | true   | the same
          =  | 1 ; 1.0000002                       | false  | two guards apart
          =  | 1 ; 1.0000003                       | true   | clearly apart
          <  | 1.0000003 ; 1                       | true   | clearly apart, the other way round
          <= | 1.0000001 ; 1                       | false  | within the guard
          =  | 9999999 ; 9999999                   | true   | the noise of large doubles is small
          =  | 10000000 ; 10000000                 | false  | the noise of larger ones is not
          >  | 10000000 ; 1                        | true   | noise does not matter so far apart
          =  | "Ash cap" ; "ash cap"               | true   | a spreadsheet knows no case
          =  | "Ash cap" ; "oak cap"               | true   | clearly another
          =  | "Ash  cap" ; "ash cap"              | false  | its spaces it knows
          =  | yes ; no                            | true   | no noise
          =  | 2026-03-14 ; 2026-03-14             | true   | dates are counted
          rounded up     | 3 ; 1                   | true   | on a step
          rounded up     | 3.0000006 ; 1           | false  | on the guard
          rounded up     | 3.0000007 ; 1           | true   | past the guard
          rounded down   | 2.9999994 ; 1           | false  | on the guard, from below
          rounded down   | 2.9999993 ; 1           | true   | past the guard, from below
          rounded        | 2.5 ; 1                 | true   | on a tie
          rounded        | 2.5000001 ; 1           | false  | near a tie
          rounded        | 3.0000001 ; 1           | true   | near a step, which is no limit here
          rounded evenly | 1.2500001 ; 0.5         | false  | near a tie of half steps
          rounded up     | 999999999 ; 1           | true   | as many steps as doubles count
          rounded up     | 1000000000 ; 1          | false  | too many steps
          rounded        | -1000000000 ; 1         | false  | too many steps below zero
          """)
  void doubles_agree_unless_a_limit_is_near(
      String name, String operands, boolean agrees, String why) {
    Operation operation = Operations.find(name).orElseThrow();
    assertThat(
            operation.agreesInSpreadsheet(
                Written.all(operands).stream().map(Written::value).toList()))
        .as(why)
        .isEqualTo(agrees);
  }

  @ParameterizedTest
  @CsvSource({"+", "*", "negate", "and"})
  void other_operations_have_no_limits(String name) {
    assertThat(Operations.find(name).orElseThrow().agreesInSpreadsheet(List.of())).isTrue();
  }
}
