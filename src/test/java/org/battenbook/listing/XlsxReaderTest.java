package org.battenbook.listing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.battenbook.bound.Bound;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class XlsxReaderTest {
  private static final String PAGE = "xl/worksheets/sheet1.xml";

  @Test
  void cells_read_as_they_would_be_typed() throws Exception {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      Row row = book.createSheet("Mouldings").createRow(2);
      row.createCell(0).setCellValue("ash \"cap\"");
      row.createCell(1).setCellValue(15.375);
      row.createCell(2).setCellValue(0.1 + 0.2);
      row.createCell(4).setCellValue(true);
      row.createCell(5).setCellValue(LocalDate.of(2026, 3, 14));
      row.getCell(5).setCellStyle(dates(book, "d mmm yyyy"));
      row.createCell(6).setCellValue(1200);
      row.createCell(7).setCellValue(-1e-7);
      assertThat(rows(bytes(book)))
          .startsWith(
              List.of(),
              List.of(),
              List.of(
                  "ash \"cap\"", "15.375", "0.3", "", "yes", "2026-03-14", "1200", "-0.0000001"));
    }
  }

  @Test
  void days_may_be_counted_from_1904() throws Exception {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      book.getCTWorkbook().addNewWorkbookPr().setDate1904(true);
      Row row = book.createSheet().createRow(0);
      row.createCell(0).setCellValue(1);
      row.getCell(0).setCellStyle(dates(book, "yyyy-mm-dd"));
      assertThat(rows(bytes(book)).get(0)).containsExactly("1904-01-02");
    }
  }

  private static CellStyle dates(XSSFWorkbook book, String format) {
    CellStyle style = book.createCellStyle();
    style.setDataFormat(book.createDataFormat().getFormat(format));
    return style;
  }

  @Test
  void a_formula_reads_as_its_stored_value() throws Exception {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      Row row = book.createSheet().createRow(0);
      row.createCell(0).setCellFormula("3*1.25");
      byte[] without = bytes(book);
      book.getCreationHelper().createFormulaEvaluator().evaluateAll();
      assertThat(rows(bytes(book)).get(0)).containsExactly("3.75");
      byte[] emptied = replaced(without, PAGE, page -> page.replaceAll("<v>[^<]*</v>", ""));
      assertThat(refused(emptied, null).code()).isEqualTo("formula-without-value");
    }
  }

  @Test
  void a_page_goes_by_its_name_and_else_the_first_is_meant() throws Exception {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      book.createSheet("Cover").createRow(0).createCell(0).setCellValue("one");
      book.createSheet("Mouldings").createRow(0).createCell(0).setCellValue("two");
      byte[] file = bytes(book);
      assertThat(rows(file).get(0)).containsExactly("one");
      assertThat(XlsxReader.read("list.xlsx", file, " mouldings").get(0)).containsExactly("two");
      BadList bad = refused(file, "Moulding");
      assertThat(bad.code()).isEqualTo("no-such-page");
      assertThat(bad.repair()).isEqualTo("did you mean 'Mouldings'?");
      assertThat(refused(file, "prices").repair()).isEqualTo("choose from: Cover, Mouldings");
    }
  }

  @Test
  void blank_rows_far_below_do_not_count() throws Exception {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      XSSFSheet page = book.createSheet();
      page.createRow(0).createCell(0).setCellValue("name");
      page.createRow(1_048_575).createCell(16_383).setCellValue(" ");
      assertThat(rows(bytes(book))).hasSize(1);
      page.getRow(1_048_575).getCell(16_383).setCellValue("far");
      assertThat(refused(bytes(book), null).message()).endsWith("it has more than 200,000 rows");
    }
  }

  @Test
  void what_is_no_spreadsheet_is_refused() throws Exception {
    byte[] file = one("name");
    List<byte[]> broken =
        List.of(
            new byte[0],
            "name,price\n".getBytes(StandardCharsets.UTF_8),
            Arrays.copyOf(file, file.length / 2),
            new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 0, 0, 0, 0},
            replaced(file, PAGE, page -> page.replace("<row r=\"1\"", "<row r=\"minus one\"")),
            replaced(file, PAGE, page -> page.replace("<v>0</v>", "<v>99</v>")),
            replaced(file, PAGE, page -> page.substring(0, page.length() / 2)),
            replaced(file, "xl/workbook.xml", workbook -> "<workbook/>"));
    for (byte[] bytes : broken) {
      assertThat(refused(bytes, null).code()).isEqualTo("list-unreadable");
    }
  }

  @Test
  void definitions_of_a_file_of_its_own_are_refused() throws Exception {
    String grows = "<!DOCTYPE x [<!ENTITY a \"ha\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;\">]>";
    String reaches = "<!DOCTYPE x [<!ENTITY a SYSTEM \"file:///etc/hostname\">]>";
    for (String doctype : new String[] {grows, reaches}) {
      byte[] file =
          replaced(
              one("name"),
              PAGE,
              page ->
                  page.replaceFirst("<worksheet", doctype + "<worksheet")
                      .replace("<v>0</v>", "<v>&a;</v>"));
      assertThat(refused(file, null).code()).isEqualTo("list-unreadable");
    }
  }

  /** Few bytes unpack to many rows: nothing is wrong with that within the bounds. */
  @Test
  void many_rows_that_are_alike_are_read() throws Exception {
    int many = 150_000;
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      book.createSheet();
      byte[] file =
          replaced(
              bytes(book),
              PAGE,
              page ->
                  page.replaceFirst(
                      "<sheetData/>",
                      "<sheetData>"
                          + "<row><c t=\"inlineStr\"><is><t>oak</t></is></c></row>".repeat(many)
                          + "</sheetData>"));
      assertThat(rows(file)).hasSize(many);
    }
  }

  @Test
  void a_file_that_unpacks_without_end_is_refused() throws Exception {
    byte[] page =
        replaced(one("name"), PAGE, text -> text + " ".repeat(Bound.LIST_UNPACKED.mostBytes()));
    assertThat(page).hasSizeLessThan(1 << 20);
    assertThat(refused(page, null).code()).isEqualTo("list-too-large");
    byte[] properties =
        replaced(one("name"), "[Content_Types].xml", text -> text + " ".repeat(5 << 20));
    assertThat(refused(properties, null).code()).isEqualTo("list-too-large");
  }

  @Test
  void a_file_of_too_many_parts_is_told_so() throws Exception {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream out = new ZipOutputStream(bytes)) {
      for (int i = 0; i < 2_000; i++) {
        out.putNextEntry(new ZipEntry("xl/media/image" + i + ".png"));
      }
    }
    assertThat(refused(bytes.toByteArray(), null).message())
        .isEqualTo("'list.xlsx' has more than the maximum of 1,000 parts");
  }

  private static byte[] one(String text) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      book.createSheet().createRow(0).createCell(0).setCellValue(text);
      return bytes(book);
    }
  }

  private static byte[] bytes(XSSFWorkbook book) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    book.write(out);
    return out.toByteArray();
  }

  /** The same file with another text in one of its parts. */
  private static byte[] replaced(byte[] file, String name, UnaryOperator<String> by)
      throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(file));
        ZipOutputStream out = new ZipOutputStream(bytes)) {
      for (ZipEntry part = in.getNextEntry(); part != null; part = in.getNextEntry()) {
        String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        out.putNextEntry(new ZipEntry(part.getName()));
        String written = part.getName().equals(name) ? by.apply(text) : text;
        out.write(written.getBytes(StandardCharsets.UTF_8));
      }
    }
    return bytes.toByteArray();
  }

  private static List<List<String>> rows(byte[] file) throws BadList {
    return XlsxReader.read("list.xlsx", file, null);
  }

  private static BadList refused(byte[] file, @Nullable String page) {
    return catchThrowableOfType(BadList.class, () -> XlsxReader.read("list.xlsx", file, page));
  }
}
