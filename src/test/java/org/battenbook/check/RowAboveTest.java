package org.battenbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.battenbook.source.Diagnostic;
import org.battenbook.workbook.TextLoader;
import org.battenbook.workbook.Workbook;
import org.junit.jupiter.api.Test;

/** A column that reads itself in the row above is checked again once its kind is known. */
class RowAboveTest {

  @Test
  void a_row_above_of_another_dimension_is_a_fault() {
    Workbook job = columns("at = if first row then 0 in else above.at + 2 lb");
    assertThat(job.diagnostics())
        .extracting(Diagnostic::code)
        .containsExactly("dimension-mismatch");
  }

  @Test
  void so_is_one_that_another_column_reads_on_the_way() {
    Workbook job =
        columns("at = if first row then 0 in else above.next", "next = at + (above.at * 1 lb)");
    assertThat(job.diagnostics())
        .extracting(Diagnostic::code)
        .containsExactly("dimension-mismatch");
  }

  @Test
  void a_row_above_of_the_same_dimension_is_none() {
    assertThat(columns("at = if first row then 0 in else above.at + 2 in").diagnostics()).isEmpty();
  }

  private static Workbook columns(String... formulas) {
    StringBuilder text =
        new StringBuilder(
            """
            workbook "t"
            page p
              table t by k
                given
                  k : text
                worked out
            """);
    for (String formula : formulas) {
      text.append("      ").append(formula).append('\n');
    }
    return TextLoader.of(text.append("  rows of t\n    k\n    \"a\"\n    \"b\"\n").toString())
        .open();
  }
}
