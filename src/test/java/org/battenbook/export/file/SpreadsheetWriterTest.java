package org.battenbook.export.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/** Reads back with Apache POI what was written. */
class SpreadsheetWriterTest {

  @Test
  void every_content_is_read_back_as_it_was_written() throws IOException {
    try (XSSFWorkbook read = read(bytes(book()))) {
      XSSFSheet sheet = read.getSheet("Mats");
      assertThat(sheet.getRow(0).getCell(0).getStringCellValue()).isEqualTo("Mats");
      assertThat(sheet.getRow(1).getCell(1).getNumericCellValue()).isEqualTo(19.375);
      assertThat(sheet.getRow(1).getCell(1).getCellStyle().getDataFormatString())
          .isEqualTo("# ??/??");
      assertThat(sheet.getRow(2).getCell(0).getBooleanCellValue()).isTrue();
      assertThat(sheet.getRow(2).getCell(1).getLocalDateTimeCellValue().toLocalDate())
          .isEqualTo(LocalDate.of(2026, 3, 14));
      assertThat(sheet.getRow(2).getCell(2).getCellType()).isEqualTo(CellType.ERROR);
    }
  }

  @Test
  void a_formula_has_its_value_beside_it() throws IOException {
    try (XSSFWorkbook read = read(bytes(book()))) {
      Cell formula = read.getSheet("Mats").getRow(3).getCell(0);
      assertThat(formula.getCellFormula()).isEqualTo("rail_step_*2");
      assertThat(formula.getNumericCellValue()).isEqualTo(38.75);
      Cell array = read.getSheet("Mats").getRow(3).getCell(1);
      assertThat(array.isPartOfArrayFormulaGroup()).isTrue();
      assertThat(array.getNumericCellValue()).isEqualTo(1);
    }
  }

  @Test
  void a_text_that_begins_like_a_formula_stays_a_text() throws IOException {
    try (XSSFWorkbook read = read(bytes(book()))) {
      Cell text = read.getSheet("Mats").getRow(3).getCell(2);
      assertThat(text.getCellType()).isEqualTo(CellType.STRING);
      assertThat(text.getStringCellValue()).isEqualTo("=1+2\";=1+2");
      assertThat(text.getCellStyle().getQuotePrefixed()).isTrue();
    }
  }

  @Test
  void any_text_is_read_back_as_it_was_written() throws IOException {
    List<String> texts =
        List.of(
            "Ünïcödé – 船 🛶",
            "\"quoted\", with commas; & <tags>",
            "two\nlines",
            "  spaces around  ",
            "@home",
            "-5 and more",
            "x".repeat(32_000));
    SheetRows rows =
        row ->
            IntStream.range(0, texts.size())
                .forEach(r -> row.accept(List.of(cell(r, 0, new CellContent.Words(texts.get(r))))));
    SheetContent sheet =
        new SheetContent("Texts", rows, Widths.of(rows), new TreeSet<>(), 0, 1, texts.size());
    try (XSSFWorkbook read = read(bytes(new FileContent("T", List.of(sheet), new TreeMap<>())))) {
      for (int r = 0; r < texts.size(); r++) {
        Cell cell = read.getSheetAt(0).getRow(r).getCell(0);
        assertThat(cell.getCellType()).isEqualTo(CellType.STRING);
        assertThat(cell.getStringCellValue()).isEqualTo(texts.get(r));
      }
    }
  }

  @Test
  void the_same_book_gives_the_same_bytes_without_a_time_in_them() throws IOException {
    byte[] first = bytes(book());
    assertThat(bytes(book())).isEqualTo(first);
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(first))) {
      for (ZipEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
        assertThat(part.getTimeLocal().getYear()).as(part.getName()).isEqualTo(1980);
      }
    }
    try (XSSFWorkbook read = read(first)) {
      assertThat(read.getProperties().getCoreProperties().getCreated()).hasYear(2000);
    }
  }

  @Test
  void headings_stay_in_sight_and_columns_that_serve_formulas_are_hidden() throws IOException {
    try (XSSFWorkbook read = read(bytes(book()))) {
      XSSFSheet sheet = read.getSheet("Mats");
      assertThat(sheet.getPaneInformation().getHorizontalSplitPosition()).isEqualTo((short) 1);
      assertThat(sheet.isColumnHidden(3)).isTrue();
      assertThat(sheet.getRow(1).getCell(1).getCellComment().getString().getString())
          .isEqualTo("as cut");
    }
  }

  private static FileContent book() {
    List<List<SheetCell>> rows =
        List.of(
            List.of(SheetCell.words(0, 0, Look.TITLE, "Mats")),
            List.of(
                new SheetCell(
                    1, 1, new CellContent.Figure(19.375), Look.GIVEN, "# ??/??", "as cut")),
            List.of(
                cell(2, 0, new CellContent.Truth(true)),
                cell(2, 1, new CellContent.Day(LocalDate.of(2026, 3, 14))),
                cell(2, 2, new CellContent.Missing())),
            List.of(
                cell(
                    3,
                    0,
                    new CellContent.Formula("rail_step_*2", false, new CellContent.Figure(38.75))),
                cell(
                    3,
                    1,
                    new CellContent.Formula("MAX(IF(A4:A4>0,1))", true, new CellContent.Figure(1))),
                cell(3, 2, new CellContent.Words("=1+2\";=1+2"))));
    SheetRows all = rows::forEach;
    SheetContent sheet =
        new SheetContent("Mats", all, Widths.of(all), new TreeSet<>(List.of(3)), 1, 3, 4);
    return new FileContent(
        "Test", List.of(sheet), new TreeMap<>(Map.of("rail_step_", "Mats!$B$2")));
  }

  private static SheetCell cell(int row, int column, CellContent content) {
    return new SheetCell(row, column, content, Look.WORKED_OUT, NumberFormats.GENERAL, "");
  }

  private static byte[] bytes(FileContent book) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SpreadsheetWriter.write(book, out, (written, all) -> {});
    return out.toByteArray();
  }

  private static XSSFWorkbook read(byte[] bytes) throws IOException {
    return new XSSFWorkbook(new ByteArrayInputStream(bytes));
  }
}
