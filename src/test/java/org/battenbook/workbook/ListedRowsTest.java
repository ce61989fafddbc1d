package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.battenbook.book.Column;
import org.battenbook.book.Loader.Unreadable;
import org.battenbook.book.Table;
import org.battenbook.export.TableExport;
import org.battenbook.listing.Listing;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.source.Diagnostic;
import org.battenbook.source.DiagnosticPrinter;
import org.battenbook.value.Value;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows of a list mean what the same rows mean when they are written in the workbook. */
class ListedRowsTest {
  private static final String HEAD =
      """
      workbook "Prices"
      currency USD
      lengths in 1/16 in

      page prices
        table prices by name
          given
            name  : text
            price : money / length
            face  : length
            lip   : length = 1/4 in
            waste : ratio = 5 %
            shift : length = 0 in
            stock : yes or no = true
            since : date = 2026-01-01
            packs : count = 1
            like  : row of woods = "ash"
          worked out
            cost of a stick = price * 8 ft * (1 + waste)
        table woods by wood
          given
            wood : text
        rows of woods
          wood
          "ash"
          "oak"
      """;

  private static final String WRITTEN =
      """
        rows of prices
          name              | price       | face     | lip   | waste | shift   | stock | since      | packs | like
          "ash cap"         | 4.25 USD/ft | 38 mm    | 1/4 in|       |         | no    | 2026-03-14 | 2     | "oak"
          "oak ""flat"", 1" | 14 USD/m    | 1 1/2 in |       | 7.5 % | -1/8 in |       |            |       |
          "12"              | 0.5 USD/in  | 40 mm    | 6 mm  | 0.1   |         | yes   |            | 12    | "Ash"
      """;

  private static final String LISTED =
      """

      NAME,Price (USD/ft),"Face, mm",lip [in],waste,shift,Stock,since,packs,like
      ash cap,4.25,38,1/4,,,no,2026-03-14,2,oak
      "oak ""flat"", 1",14 USD/m,1 1/2 in,,7.5 %,-1/8 in,,,,
      ,,,
      12,0.5 USD/in,40,6 mm,0.1,,yes,,12,Ash
      """;

  @TempDir Path folder;

  @Test
  void rows_of_a_list_are_worth_what_written_rows_are() throws Exception {
    Filled written = filled(HEAD + WRITTEN);
    Files.writeString(folder.resolve("supplier.csv"), LISTED);
    Filled listed = filled(HEAD + "  rows of prices from \"supplier.csv\"\n");
    assertSame(written, listed);
    assertThat(written.find("price of ash cap").at()).isEqualTo("job.batten:29");
    assertThat(listed.find("price of ash cap").at()).isEqualTo("supplier.csv:3");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      textBlock =
          """
          price (USD/ft)    ! 4.25           ! 17/48
          Price  (USD/ft)   ! 4 1/4          ! 17/48
          PRICE(USD/ft)     ! 4½             ! 3/8
          price [ USD/ft ]  ! -4.25          ! -17/48
          price, USD/ft     ! 4.25           ! 17/48
          price             ! 4.25 USD/ft    ! 17/48
          price             ! 4.25USD/ft     ! 17/48
          price (USD/m)     ! 4.25 USD/ft    ! 17/48
          price (USD/in)    ! 12 USD/in^1    ! 12
          """)
  void a_unit_stands_in_the_heading_or_behind_the_number(String heading, String cell, String price)
      throws Exception {
    list("name;%s;face (mm)\nash;%s;38\n".formatted(heading, cell));
    assertThat(listed().find("price of ash").exact()).isEqualTo(price);
  }

  @Test
  void titles_may_stand_above_the_headings() throws Exception {
    list(
        "\nPrices of the mill\n\"Spring, all per foot\",,\nface (mm),price (USD/ft),Name\n38,3,ash\n");
    assertThat(listed().find("price of ash").at()).isEqualTo("supplier.csv:5");
  }

  @Test
  void headings_are_compared_as_names_are() throws Exception {
    Files.writeString(folder.resolve("supplier.csv"), "\u00A0NAME , Pre\u0301cis (mm)\nash,38\n");
    Filled listed =
        filled(
            """
            workbook "Names"
            page p
              table t by name
                given
                  name : text
                  pr\u00e9cis : length
              rows of t from "supplier.csv"
            """);
    assertThat(listed.find("pr\u00e9cis of ash").exact()).isEqualTo("190/127");
  }

  /** A sign, a quote or a separator anywhere: told of, and never a failure of our own. */
  @Test
  void any_text_is_a_list_or_is_told_of() throws Exception {
    long seed = 1180;
    Random random = new Random(seed);
    String[] words = {
      "name",
      "price (USD/ft)",
      "face (mm)",
      "ash",
      "4.25",
      ",",
      ";",
      "\"",
      "\n",
      "\r",
      " ",
      "(",
      ")",
      "[",
      "'",
      "=",
      "-",
      "1/0",
      "9".repeat(200),
      "{",
      "|",
      "--",
      "\t",
      "\uFEFF",
      "\uD83D\uDE00",
      "%"
    };
    for (int i = 0; i < 500; i++) {
      StringBuilder text = new StringBuilder("name,price (USD/ft),face (mm)\n");
      text.setLength(random.nextInt(4) == 0 ? 0 : text.length());
      for (int j = random.nextInt(20); j >= 0; j--) {
        text.append(words[random.nextInt(words.length)]);
      }
      list(text.toString());
      Workbook workbook = opened(HEAD + "  rows of prices from \"supplier.csv\"\n");
      if (!workbook.hasFaults()) {
        assertThat(workbook.fill().faults()).as("seed %d, text %d: %s", seed, i, text).isEmpty();
      }
      workbook.diagnostics().forEach(new DiagnosticPrinter()::print);
    }
  }

  private void list(String text) throws IOException {
    Files.writeString(folder.resolve("supplier.csv"), text);
  }

  private Filled listed() throws IOException, Unreadable {
    return filled(HEAD + "  rows of prices from \"supplier.csv\"\n");
  }

  @Test
  void a_spreadsheet_file_reads_as_its_text_does() throws Exception {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      book.createSheet("Cover");
      var page = book.createSheet("Spring");
      List<List<String>> lines =
          Listing.read("list.csv", LISTED.getBytes(StandardCharsets.UTF_8), null).rows();
      for (int i = 0; i < lines.size(); i++) {
        Row row = page.createRow(i);
        for (int j = 0; j < lines.get(i).size(); j++) {
          row.createCell(j).setCellValue(lines.get(i).get(j));
        }
      }
      page.getRow(2).getCell(1).setCellValue(4.25);
      page.getRow(2).getCell(2).setCellValue(38);
      page.getRow(5).getCell(0).setCellValue(12);
      try (var out = Files.newOutputStream(folder.resolve("supplier.xlsx"))) {
        book.write(out);
      }
    }
    Filled listed = filled(HEAD + "  rows of prices from \"supplier.xlsx\" page \"Spring\"\n");
    assertSame(filled(HEAD + WRITTEN), listed);
    assertThat(listed.find("price of ash cap").at()).isEqualTo("supplier.xlsx:3");
  }

  @Test
  void a_list_may_stand_beside_written_rows_and_goes_by_the_folder_of_its_workbook()
      throws Exception {
    Files.createDirectory(folder.resolve("standards"));
    Files.writeString(
        folder.resolve("standards/prices.batten"),
        HEAD + "  rows of prices from \"lists/more.csv\"\n");
    Files.createDirectory(folder.resolve("standards/lists"));
    Files.writeString(
        folder.resolve("standards/lists/more.csv"),
        "name;price (USD/ft);face (mm)\r\nbirch;3;38\r\n");
    String job =
        "workbook \"Job\"\nfollows \"standards/prices.batten\"\npage prices\n"
            + WRITTEN.replace("\"ash cap\" ", "\"Ash Cap\" ");
    Filled filled = filled(job);
    assertThat(filled.find("cost of a stick of Birch").shown().text()).isEqualTo("25.20 USD");
    assertThat(filled.find("face of birch").at()).isEqualTo("more.csv:2");
    assertThat(filled.find("face of ash cap").at()).isEqualTo("job.batten:6");
  }

  @Test
  void why_ends_at_the_file_and_its_row() throws Exception {
    Files.writeString(folder.resolve("supplier.csv"), LISTED);
    Filled listed = filled(HEAD + "  rows of prices from \"supplier.csv\"\n");
    var price = listed.why("cost of a stick of 12").from().get(0);
    assertThat(price.at().place()).isEqualTo("supplier.csv:6");
    assertThat(price.how().toString()).isEqualTo("GIVEN");
  }

  @Test
  void a_table_that_was_written_out_reads_back_the_same() throws Exception {
    Filled written = filled(HEAD + WRITTEN);
    try (var out = Files.newOutputStream(folder.resolve("back.csv"))) {
      TableExport.write(written, table(written), out);
    }
    Workbook workbook = opened(HEAD + "  rows of prices from \"back.csv\"\n");
    assertThat(workbook.diagnostics())
        .extracting(Diagnostic::code)
        .containsExactly("list-columns-left-out");
    Filled back = workbook.fill();
    for (Column column : table(written).columns()) {
      for (int row = 0; row < written.rows(table(written)).count(); row++) {
        assertNear(back.value(column(back, column), row), written.value(column, row));
      }
    }
    assertThat(back.find("lip of ash cap").exact()).isEqualTo("1/4");
    assertThat(back.find("shift of oak \"flat\", 1").exact()).isEqualTo("-1/8");
  }

  /** A length in millimeters is no decimal of inches: of those, fifteen digits come back. */
  private static void assertNear(FilledValue back, FilledValue written) {
    if (written.value() instanceof Value.Amount a && back.value() instanceof Value.Amount b) {
      Real apart = a.quantity().number().minus(b.quantity().number()).abs();
      Real most = a.quantity().number().abs().times(Rational.of(1, 10).pow(14));
      assertThat(apart.compareTo(most)).as(written.words()).isNotPositive();
      assertThat(b.quantity().dimension()).isEqualTo(a.quantity().dimension());
    } else {
      assertThat(back.value()).as(written.words()).isEqualTo(written.value());
    }
  }

  private static void assertSame(Filled expected, Filled found) {
    assertThat(found.rows(table(found)).keys().names())
        .isEqualTo(expected.rows(table(expected)).keys().names());
    for (Column column : table(expected).columns()) {
      for (int row = 0; row < expected.rows(table(expected)).count(); row++) {
        assertThat(found.value(column(found, column), row).value())
            .as(expected.value(column, row).words())
            .isEqualTo(expected.value(column, row).value());
      }
    }
  }

  private static Column column(Filled filled, Column like) {
    return Objects.requireNonNull(table(filled).column(like.name().key()));
  }

  private static Table table(Filled filled) {
    return Objects.requireNonNull(filled.book().table("prices"));
  }

  private Filled filled(String job) throws IOException, Unreadable {
    Workbook workbook = opened(job);
    assertThat(workbook.diagnostics()).isEmpty();
    return workbook.fill();
  }

  private Workbook opened(String job) throws IOException, Unreadable {
    Path file = Files.writeString(folder.resolve("job.batten"), job);
    return Workbook.open(file.toString());
  }
}
