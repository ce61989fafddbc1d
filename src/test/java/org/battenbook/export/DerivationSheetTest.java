package org.battenbook.export;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.battenbook.bench.WideBook;
import org.battenbook.bind.Spot;
import org.battenbook.book.Column;
import org.battenbook.book.Loader;
import org.battenbook.export.file.Address;
import org.battenbook.export.layout.DerivationLayout;
import org.battenbook.export.layout.FileLayout;
import org.battenbook.export.layout.RuleLayout;
import org.battenbook.export.layout.RuleSheetLayout;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.TextLoader;
import org.battenbook.workbook.Workbook;
import org.junit.jupiter.api.Test;

/** The sheets that explain a file: how it is calculated, checks and cautions. */
class DerivationSheetTest {
  private static final String MUSEUM = "workbooks/saltmarsh-ferry-museum.batten";

  @Test
  void every_value_has_a_row_that_leads_to_its_cell_and_reads_it() throws Exception {
    Filled museum = fill();
    try (XSSFWorkbook book = Recalculation.exported(museum)) {
      Map<Spot, Address> places = Places.of(museum);
      XSSFSheet sheet = book.getSheet("How calculated");
      assertThat(sheet.getLastRowNum()).isEqualTo(DerivationLayout.HEADING_ROW + places.size());
      FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
      Map<String, String> links = links(sheet);
      for (int r = DerivationLayout.HEADING_ROW + 1; r <= sheet.getLastRowNum(); r++) {
        Cell name = sheet.getRow(r).getCell(DerivationLayout.NAME);
        Cell result = sheet.getRow(r).getCell(DerivationLayout.RESULT);
        String link = requireNonNull(links.get(name.getAddress().formatAsString()));
        assertThat(link).isEqualTo(result.getCellFormula());
        assertThat(evaluator.evaluate(result).formatAsString())
            .isEqualTo(evaluator.evaluate(followed(book, link)).formatAsString());
        assertThat(result.getCachedFormulaResultType())
            .as("%s, before it is calculated again", link)
            .isEqualTo(evaluator.evaluate(result).getCellType());
      }
    }
  }

  /** All links of a sheet by the cell that has them: asked one by one, each goes through all. */
  private static Map<String, String> links(XSSFSheet sheet) {
    return sheet.getHyperlinkList().stream()
        .collect(Collectors.toMap(XSSFHyperlink::getCellRef, XSSFHyperlink::getAddress));
  }

  private static Cell followed(XSSFWorkbook book, Cell link) {
    return followed(book, link.getHyperlink().getAddress());
  }

  private static Cell followed(XSSFWorkbook book, String address) {
    CellReference at = new CellReference(address);
    return book.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
  }

  @Test
  void a_live_cell_leads_to_its_derivation_and_back() throws Exception {
    Filled museum = fill();
    try (XSSFWorkbook book = Recalculation.exported(museum)) {
      Cell cell = Places.cell(book, Places.at(museum, spot(museum, "top rail", "Fares of 1911")));
      Cell told = followed(book, cell);
      assertThat(told.getStringCellValue()).isEqualTo("top rail");
      assertThat(text(told, DerivationLayout.ROW)).isEqualTo("Fares of 1911");
      assertThat(followed(book, told).getAddress()).isEqualTo(cell.getAddress());
    }
  }

  @Test
  void formulas_changes_and_entered_results_are_told() throws Exception {
    Filled museum = fill();
    try (XSSFWorkbook book = Recalculation.exported(museum)) {
      Cell needed = told(book, museum, museum.spot("rabbet opening width needed of Fares of 1911"));
      assertThat(text(needed, DerivationLayout.FORMULA))
          .isEqualTo("package width + style.package allowance");
      assertThat(text(needed, DerivationLayout.WITH_VALUES)).endsWith(" in + 3/16 in");
      assertThat(text(needed, DerivationLayout.SET_IN)).startsWith("frames.batten:");
      Cell changed = told(book, museum, museum.spot("fitting allowance"));
      assertThat(text(changed, DerivationLayout.CHANGED))
          .startsWith("from 1/8 in (allowances.batten:")
          .endsWith("because the backing boards from the attic are oversize");
      Cell measured = told(book, museum, museum.spot("top rail of The Heron, elevation"));
      assertThat(text(measured, DerivationLayout.CHANGED)).startsWith("entered; the formula gives");
    }
  }

  private static Cell told(XSSFWorkbook book, Filled filled, Spot spot) {
    Address at =
        requireNonNull(
            new FileLayout(filled.checked().book(), filled.results()).derivations().of(spot));
    return Places.cell(book, at);
  }

  private static String text(Cell told, int column) {
    return told.getRow().getCell(column).getStringCellValue();
  }

  @Test
  void too_many_values_are_told_of_in_the_first_row_of_each_table() throws IOException {
    Filled wide = TextLoader.of(WideBook.text(1200)).open().fill();
    try (XSSFWorkbook book = Recalculation.exported(wide)) {
      XSSFSheet sheet = book.getSheet("How calculated");
      assertThat(sheet.getLastRowNum()).isLessThan(100);
      assertThat(sheet.getRow(1).getCell(0).getStringCellValue())
          .startsWith("One row for each line, and one for the first row of each column");
    }
  }

  @Test
  void a_check_counts_the_rows_that_fail_it_when_the_file_is_edited() throws IOException {
    Filled filled =
        TextLoader.of(
                """
                workbook "Rails"
                page allowances
                  stick length = 8 ft
                  require stick length > 5 ft
                    else "A stick of {stick length} is too short."
                page rails
                  table rails by name
                    given
                      name : text
                      length : length
                    require length <= stick length
                      else "{name} does not fit a stick."
                    caution when length > 90 in
                      say "{name} is long: ask for help."
                  rows of rails
                    name | length
                    "a" | 100 in
                    "b" | 95 in
                    "c" | 3 in
                """)
            .open()
            .fill();
    try (XSSFWorkbook book = Recalculation.exported(filled)) {
      RuleSheetLayout rules = new FileLayout(filled.checked().book(), filled.results()).rules();
      RuleLayout required = rules.blocks().get(0);
      RuleLayout cautions = rules.blocks().get(1);
      XSSFSheet sheet = book.getSheet("Checks");
      assertThat(counts(sheet, required)).containsExactly(0, 1);
      assertThat(counts(sheet, cautions)).containsExactly(2);
      XSSFRow rails = sheet.getRow(required.row(1));
      assertThat(rails.getCell(RuleLayout.SAYS).getStringCellValue())
          .isEqualTo("a does not fit a stick.");
      Cell stick = Places.cell(book, Places.at(filled, filled.spot("stick length")));
      if (stick.getCellType() == CellType.FORMULA) {
        stick.removeFormula();
      }
      stick.setCellValue(2);
      book.getCreationHelper().createFormulaEvaluator().evaluateAll();
      assertThat(counts(sheet, required)).containsExactly(1, 3);
      XSSFSheet first = book.getSheetAt(0);
      XSSFRow summary = first.getRow(first.getLastRowNum() - 2);
      assertThat(summary.getCell(0).getStringCellValue()).isEqualTo("checks that fail");
      assertThat(summary.getCell(1).getNumericCellValue()).isEqualTo(4);
      assertThat(followed(book, summary.getCell(0)).getStringCellValue()).isEqualTo("table");
      assertThat(first.getRow(first.getLastRowNum()).getCell(0).getStringCellValue())
          .isEqualTo("a does not fit a stick.");
    }
  }

  private static double[] counts(XSSFSheet sheet, RuleLayout layout) {
    return layout.rules().stream()
        .mapToDouble(
            ruled ->
                sheet
                    .getRow(layout.row(layout.rules().indexOf(ruled)))
                    .getCell(RuleLayout.COUNT)
                    .getNumericCellValue())
        .toArray();
  }

  private static Filled fill() throws Loader.Unreadable {
    return Workbook.open(MUSEUM).fill();
  }

  private static Spot spot(Filled filled, String column, String row) {
    Spot spot = filled.spot(column + " of " + row);
    assertThat(spot.place()).isInstanceOf(Column.class);
    return spot;
  }
}
