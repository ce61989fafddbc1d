package org.battenbook.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.battenbook.SpecTable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The functions that the export relies on mean what it takes them to mean, in Apache POI's
 * evaluator: by the table {@code spec/openformula.tsv}, which names its sources.
 */
class OpenFormulaTest {

  @TestFactory
  Stream<DynamicTest> function_means_what_the_standard_says() {
    return SpecTable.read("openformula").each(cells -> check(cells.get(0), cells.get(1)));
  }

  private static void check(String formula, String value) {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      Cell cell = book.createSheet().createRow(0).createCell(0);
      cell.setCellFormula(formula);
      CellValue found = book.getCreationHelper().createFormulaEvaluator().evaluate(cell);
      switch (found.getCellType()) {
        case NUMERIC -> assertThat(found.getNumberValue()).isEqualTo(Double.parseDouble(value));
        case BOOLEAN -> assertThat(found.getBooleanValue()).isEqualTo(value.equals("TRUE"));
        default -> assertThat(found.getStringValue()).isEqualTo(value);
      }
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
