package org.battenbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.battenbook.source.Diagnostic;
import org.battenbook.value.Value;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.TextLoader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A formula of a count is checked while it is calculated unless all that it reads are counts. */
class CountsTest {
  private static final String JOB =
      """
      workbook "t"
      to find twice(x : number) = 2 * x
      page p
        table t by k
          given
            k : text
            m : count
            w : number
            b : yes or no
          worked out
            other : row of t = row of t where k = "b"
            n : count = %s
        rows of t
          k   | m | w   | b
          "a" | 1 | 1.5 | true
          "b" | 2 | 2.5 | false
      """;

  private static Value n(String formula, String row) {
    Filled filled = TextLoader.of(JOB.formatted(formula)).open().fill();
    return filled.find("n of " + row).value();
  }

  @ParameterizedTest
  @CsvSource({
    "m, 2",
    "other.m, 2",
    "if b then m else 7, 7",
    "if b then w else m, 2",
    "count of t, 2",
    "count of t where w > 2, 1",
    "sum of m over t, 3",
    "'largest of m over t', 2",
    "'sum of m * 2 over t', 6",
    "m + m, 4",
    "m * m, 4",
    "'max(m, 9)', 9",
    "'min(m, 1)', 1",
    "m - 2, 0",
    "w + 1/2, 3",
    "w rounded up to 1, 3",
    "twice(m), 4",
    "above.m, 1",
  })
  void a_formula_that_gives_a_count_is_fine(String formula, String expected) {
    String safe = formula.startsWith("above") ? "if first row then 0 else " + formula : formula;
    assertThat(((Value.Amount) n(safe, "b")).quantity().number()).hasToString(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "w, b",
    "other.w, a",
    "if b then m else w, b",
    "if b then w else m, a",
    "if b then 1/2 else m, a",
    "sum of w - 1/3 over t, a",
    "average of m over t, a",
    "largest of w over t, a",
    "smallest of m - 2 over t, a",
    "sum of 0 - m over t, a",
    "m + w, a",
    "m - 2, a",
    "m / 3, a",
    "m * w, a",
    "'max(m, w)', a",
    "'min(m, 0 - 1)', a",
    "twice(w + 1/4), a",
    "-m, b",
  })
  void a_formula_that_does_not_is_an_error(String formula, String row) {
    assertThat(n(formula, row))
        .isInstanceOfSatisfying(
            Value.Fault.class, fault -> assertThat(fault.code()).isEqualTo("not-a-count"));
  }

  @ParameterizedTest
  @CsvSource({"1/2", "-1", "2.5"})
  void a_number_that_is_written_is_checked_at_once(String formula) {
    assertThat(TextLoader.of(JOB.formatted(formula)).open().diagnostics())
        .extracting(Diagnostic::code)
        .containsExactly("not-a-count");
  }
}
