package org.battenbook.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.battenbook.export.layout.RuleLayout;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.TextLoader;
import org.battenbook.workbook.Workbook;
import org.junit.jupiter.api.Test;

/** Comparisons that hold even at worst, as live formulas. */
class TolerancesInSheetsTest {
  private static final String PARTS =
      """
      workbook "parts"
      lengths in 0.01 mm
      page p
        saw  = 0.2 mm
        hole = 30 mm ± saw
        fits = hole < 30.2 mm even at worst
        table parts by name
          given
            name : text
            size : length
            base : row of parts = "one"
          worked out
            cut  = size + 1 mm rounded up to 1 mm ± saw
            pair = cut + base.cut
            good = pair <= hole - 10 mm even at worst
          require 2 * pair <= 39.6 mm even at worst
            else "{name}: {pair}"
        rows of parts
          name    | size             | base  | cut
          "one"   | 8.5 mm ± 0.1 mm  |       |
          "two"   | 9 mm ± 0.1 mm    | "one" |
          "three" | 8 mm             | "two" | 9 mm
          "four"  | 8 mm             | "two" | 9.4 mm ± 0.05 mm
          "five"  | 3 mm ± 0.1 mm    | "two" | size + size ± 0.01 mm
        lines
          count = count of parts where pair <= 20 mm even at worst
      """;

  private static Filled filled() {
    Workbook job = TextLoader.of(PARTS).open();
    assertThat(job.hasFaults()).as(job.diagnostics().toString()).isFalse();
    return job.fill();
  }

  @Test
  void a_file_recalculates_to_the_same_verdicts() throws IOException {
    Filled filled = filled();
    assertThat(Recalculation.fixed(filled)).isEmpty();
    assertThat(Recalculation.agrees(filled)).isGreaterThan(10);
  }

  private static Cell ruleCount(Sheet sheet) {
    for (Row row : sheet) {
      Cell cell = row.getCell(RuleLayout.COUNT);
      if (cell != null && cell.getCellType() == CellType.FORMULA) {
        return cell;
      }
    }
    throw new AssertionError("no rule is a live formula");
  }

  @Test
  void a_check_counts_the_rows_that_fail_at_worst() throws IOException {
    Filled filled = filled();
    long failed = filled.requirements().stream().filter(v -> v.isNo()).count();
    assertThat(failed).isEqualTo(2L);
    try (XSSFWorkbook book = Recalculation.exported(filled)) {
      FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
      Cell count = ruleCount(book.getSheet("Checks"));
      assertThat(evaluator.evaluate(count).getNumberValue()).isEqualTo(2.0);
    }
  }
}
