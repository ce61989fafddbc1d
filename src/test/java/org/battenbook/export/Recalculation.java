package org.battenbook.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.Comment;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.battenbook.bind.Spot;
import org.battenbook.evaluate.DoubleNoise;
import org.battenbook.export.file.Address;
import org.battenbook.number.Real;
import org.battenbook.unit.Form;
import org.battenbook.value.Value;
import org.battenbook.workbook.Filled;

/**
 * Exports a workbook, strips the file of the values beside its formulas, has Apache POI's evaluator
 * work them out anew, and compares them with the workbook's own.
 */
final class Recalculation {
  private Recalculation() {}

  static XSSFWorkbook exported(Filled filled) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SpreadsheetExport.write(filled, out);
    return new XSSFWorkbook(new ByteArrayInputStream(out.toByteArray()));
  }

  /** The places that are written as values though a formula works them out, with the reasons. */
  static Map<Spot, String> fixed(Filled filled) throws IOException {
    Map<Spot, String> fixed = new LinkedHashMap<>();
    try (XSSFWorkbook book = exported(filled)) {
      Places.of(filled)
          .forEach(
              (spot, at) -> {
                Comment comment = Places.cell(book, at).getCellComment();
                String said = comment == null ? "" : comment.getString().getString();
                if (said.startsWith("a value, not a formula")) {
                  fixed.put(spot, said);
                }
              });
    }
    return fixed;
  }

  /** How many formula cells were compared. */
  static int agrees(Filled filled) throws IOException {
    try (XSSFWorkbook book = exported(filled)) {
      return agrees(filled, book);
    }
  }

  /** The same of a file whose inputs were edited as the workbook's were. */
  static int agrees(Filled filled, XSSFWorkbook book) {
    forget(book);
    FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
    DoubleNoise noise = new DoubleNoise(filled.results());
    int compared = 0;
    for (Map.Entry<Spot, Address> place : Places.of(filled).entrySet()) {
      Cell cell = Places.cell(book, place.getValue());
      if (cell.getCellType() == CellType.FORMULA) {
        String as = "%s at %s: %s".formatted(place.getKey(), place.getValue(), cell);
        assertSame(filled, place.getKey(), evaluator.evaluate(cell), noise, as);
        compared++;
      }
    }
    return compared;
  }

  private static void forget(XSSFWorkbook book) {
    for (Sheet sheet : book) {
      for (Row row : sheet) {
        for (Cell cell : row) {
          boolean known = ((XSSFCell) cell).getCTCell().isSetV();
          if (known && cell.getCellType() == CellType.FORMULA) {
            ((XSSFCell) cell).getCTCell().unsetV();
          }
        }
      }
    }
  }

  private static void assertSame(
      Filled filled, Spot spot, CellValue found, DoubleNoise noise, String as) {
    Value expected = filled.results().value(spot);
    if (expected instanceof Value.Amount amount) {
      Form form = filled.checked().place(spot.place()).form();
      assertThat(form).isNotNull();
      Real noisy = ((Value.Amount) noise.value(spot)).quantity().in(form.unit());
      Real exact = amount.quantity().in(form.unit());
      assertClose(exact, found.getNumberValue(), noisy.bound(), as);
    } else if (expected instanceof Value.Text text) {
      assertThat(found.getStringValue()).as(as).isEqualTo(text.text());
    } else if (expected instanceof Value.Row row) {
      assertThat(found.getStringValue()).as(as).isEqualTo(row.name());
    } else if (expected instanceof Value.YesNo yesNo) {
      assertThat(found.getCellType()).as(as).isEqualTo(CellType.BOOLEAN);
      assertThat(found.getBooleanValue()).as(as).isEqualTo(yesNo.yes());
    } else if (expected instanceof Value.Day day) {
      assertThat(DateUtil.getLocalDateTime(found.getNumberValue()).toLocalDate())
          .as(as)
          .isEqualTo(day.date());
    } else if (filled.value(spot).staysEmpty()) {
      assertThat(found.getStringValue()).as(as).isEmpty();
    } else {
      assertThat(found.getCellType()).as(as).isEqualTo(CellType.ERROR);
    }
  }

  private static void assertClose(Real expected, double found, double noise, String as) {
    double off = Math.abs(found - expected.toDouble());
    assertThat(off)
        .as("%s, %s for %s", as, found, expected.toDouble())
        .isLessThanOrEqualTo(noise + expected.bound());
  }
}
