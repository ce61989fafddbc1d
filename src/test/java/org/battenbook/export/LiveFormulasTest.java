package org.battenbook.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Comment;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.TextLoader;
import org.battenbook.workbook.Workbook;
import org.junit.jupiter.api.Test;

/** How each construct of the language is said in a spreadsheet, and that it comes out the same. */
class LiveFormulasTest {

  @Test
  void a_line_reads_others_by_their_names() throws IOException {
    Filled filled =
        fill(
            """
            page sizes
              width = 11 in
              rail step = 1/16 in
              rail = 2 * width + 3/8 in rounded up to rail step
            """);
    assertThat(formula(filled, "rail"))
        .isEqualTo("-INT(-ROUND((2*width_+0.375)/rail_step_,6))*rail_step_");
  }

  @Test
  void a_number_written_in_another_unit_is_converted_in_sight() throws IOException {
    Filled filled = fill("page sizes\n  width = 297 mm\n  twice = 2 * width\n");
    assertThat(formula(filled, "width")).isEqualTo("297/25.4");
    assertThat(formula(filled, "twice")).isEqualTo("2*width_");
  }

  @Test
  void numbers_are_in_the_unit_that_is_shown_and_formulas_calculate_in_base_units()
      throws IOException {
    Filled filled =
        fill(
            """
            page sizes
              width = 297 mm shown as mm
              area = width * width
              ratio = width / 1 in
            """);
    assertThat(formula(filled, "area")).isEqualTo("width_/25.4*width_/25.4");
    assertThat(formula(filled, "ratio")).isEqualTo("width_/25.4/1");
  }

  @Test
  void a_row_is_looked_up_by_its_number() throws IOException {
    Filled filled =
        fill(
            TABLES
                + """
                page pieces
                  table pieces
                    worked out
                      back = moulding.face - moulding.lip
                """);
    assertThat(formula(filled, "back of Heron"))
        .isEqualTo("INDEX(mouldings!$B$4:$B$6,E4)-INDEX(mouldings!$C$4:$C$6,E4)");
  }

  @Test
  void totals_stream_over_columns_and_helper_columns() throws IOException {
    live(
        TABLES
            + """
            page totals
              all = sum of width over pieces
              wide = sum of width * 2 over pieces where width > 10 in
              counted = count of pieces where moulding = "ash cap"
              rows = count of pieces
              mean = average of width over pieces
              widest = largest of width over pieces
              least ash = smallest of width over pieces where moulding = "ash cap"
              deep = sum of moulding.face over pieces where moulding.lip > 1/4 in and width < 20 in
            """);
  }

  @Test
  void rows_are_matched_by_number_with_the_row_around() throws IOException {
    String text =
        TABLES
            + """
            page mouldings
              table mouldings
                worked out
                  run = sum of 2 * width over pieces where moulding = this
                  used = count of pieces where moulding = this
                  wide run = sum of width over pieces where moulding = this and width > 10 in
                  mean = if used > 0 then (average of width over pieces where moulding = this) else 0 in
            """;
    live(text);
    assertThat(formula(fill(text), "run of ash cap"))
        .isEqualTo("SUMIF(pieces!$D$4:$D$6,ROW()-ROW($A$3),pieces!$E$4:$E$6)");
  }

  @Test
  void what_else_reads_the_row_around_is_an_array_beside_it() throws IOException {
    live(
        TABLES
            + """
            page mouldings
              table mouldings
                worked out
                  wider = sum of width over pieces where width > 4 * this.face
                  number = count of pieces where width > 4 * this.face and width < 30 in
                  largest run = if number > 0 then (largest of width over pieces where width > 4 * this.face) else 0 in
                  same = count of pieces where moulding.face = this.face
                  namesakes = count of pieces where title = this.moulding
                  faced = sum of width * this.face over pieces
            """);
  }

  @Test
  void a_row_is_chosen_by_its_number() throws IOException {
    live(
        TABLES
            + """
            page pieces
              table pieces
                worked out
                  fitting = row of mouldings where face * 14 > this.width with smallest face
                  its face = fitting.face
                  first pick = row of mouldings where lip = 1/4 in with largest face
            page totals
              broadest = row of mouldings with largest face
              broad face = broadest.face
            """);
  }

  @Test
  void a_row_reads_the_one_above() throws IOException {
    String text =
        TABLES
            + """
            page pieces
              table pieces
                worked out
                  left = if first row then 0 in else above.left + above.width + 2 in
            """;
    live(text);
    assertThat(formula(fill(text), "left of Tide")).isEqualTo("IF(ROW()=ROW($A$4),0,D4+B4+2)");
  }

  @Test
  void functions_are_written_out_and_changes_hold_what_they_changed() throws IOException {
    String text =
        """
        page sizes
          opening = 20 in
          rail = long point(opening, 1 1/2 in)
          kerf = if (opening > 10 in and not (opening = 12 in)) or opening < 1 in then 1/8 in else 0 in
        to find long point(inside, face) = inside + 2 * face
        """;
    assertThat(formula(fill(text), "rail")).isEqualTo("opening_+2*1.5");
    Workbook changed =
        new TextLoader()
            .with("shop.batten", text)
            .with(
                "job.batten",
                "follows \"shop.batten\"\nchange rail = rail + 1 in because \"it is wanted so\"\n")
            .open();
    assertThat(changed.diagnostics()).isEmpty();
    Filled filled = changed.fill();
    assertThat(formula(filled, "rail")).isEqualTo("opening_+2*1.5+1");
    Recalculation.agrees(filled);
  }

  @Test
  void texts_with_holes_show_values_as_the_workbook_does() throws IOException {
    live(
        """
        page labels
          due = 2026-03-14
          width = 19 3/8 in
          deep = -3/16 in
          odd = 297 mm
          cost = 12.5 USD
          pieces = 4
          third = 1/3
          glazed = true
          one = "{width} by {deep} or {odd}, {width shown as 0.01 in}"
          two = "{pieces} at {cost}, {third}; {glazed}, by {due}"
          three = "{odd shown as mm}"
        """);
  }

  @Test
  void a_line_that_is_not_entered_keeps_what_needs_it_live() throws IOException {
    Filled filled = fill("page wall\n  wall width : length\n  half = wall width / 2\n");
    assertThat(formula(filled, "half")).isEqualTo("wall_width_/2");
    assertThat(cell(filled, "wall width").getCellType()).isEqualTo(CellType.ERROR);
    assertThat(comment(filled, "wall width")).isEqualTo("enter a value");
    Recalculation.agrees(filled);
  }

  /** A live formula would go over the rows that are there, as if they were all. */
  @Test
  void what_goes_over_rows_that_are_not_all_known_is_no_number() throws IOException {
    Filled filled =
        fill(
            """
            page walls
              table pieces by title
                given
                  title    : text
                  quantity : count
              table places by place
                for each piece of pieces, number to quantity
              rows of pieces
                title   | quantity
                "Heron" | 2
                "Ferry" |
              lines
                many  = count of places
                twice = 2 * many
                first = row of places with smallest number
            """);
    assertThat(cell(filled, "many").getCellType()).isEqualTo(CellType.ERROR);
    assertThat(cell(filled, "first").getCellType()).isEqualTo(CellType.ERROR);
    assertThat(comment(filled, "many")).contains("not all rows of 'places' are known yet");
    assertThat(formula(filled, "twice")).isEqualTo("2*many_");
    Recalculation.agrees(filled);
  }

  @Test
  void what_lies_too_near_to_a_limit_is_a_value_with_the_reason() throws IOException {
    Filled filled =
        fill(
            """
            page sizes
              near = 5 in + 1/100000000 in
              rail = near rounded up to 1/16 in
              same = near > 5 in
              clear = near > 4 in
            """);
    assertThat(cell(filled, "rail").getCellType()).isEqualTo(CellType.NUMERIC);
    assertThat(cell(filled, "rail").getNumericCellValue()).isEqualTo(5.0625);
    assertThat(comment(filled, "rail")).startsWith("a value, not a formula: it lies too near");
    assertThat(cell(filled, "same").getCellType()).isEqualTo(CellType.BOOLEAN);
    assertThat(cell(filled, "clear").getCellType()).isEqualTo(CellType.FORMULA);
    Recalculation.agrees(filled);
  }

  @Test
  void what_lies_too_near_to_a_limit_inside_a_change_is_a_value_too() throws IOException {
    String shop =
        "workbook \"Shop\"\npage p\n  x = 1.00000001 in\n  rail = x rounded up to 1/16 in\n";
    String job =
        """
        workbook "Job"
        follows "shop.batten"
        change rail = rail + 1 in because "it is oversize"
        """;
    Filled filled = TextLoader.of(job).with("shop.batten", shop).open().fill();
    assertThat(cell(filled, "rail").getCellType()).isEqualTo(CellType.NUMERIC);
    assertThat(cell(filled, "rail").getNumericCellValue()).isEqualTo(2.0625);
    assertThat(comment(filled, "rail")).startsWith("a value, not a formula: it lies too near");
    Recalculation.agrees(filled);
  }

  @Test
  void an_error_is_no_value_and_says_why() throws IOException {
    Filled filled = fill("page p\n  none = 0\n  bad = 1 / none\n  next = bad + 1\n");
    assertThat(comment(filled, "bad")).contains("divides by zero");
    assertThat(formula(filled, "next")).isEqualTo("bad_+1");
    Recalculation.agrees(filled);
  }

  @Test
  void an_error_that_a_spreadsheet_finds_too_stays_a_live_formula() throws IOException {
    Filled filled =
        fill(TABLES + "page totals\n  widest = largest of width over pieces where width > 9 ft\n");
    assertThat(formula(filled, "widest")).startsWith("IF(COUNT(");
    assertThat(comment(filled, "widest")).startsWith("no rows match");
    Recalculation.agrees(filled);
  }

  @Test
  void a_cell_that_is_entered_wins_over_its_formula() throws IOException {
    Filled filled =
        fill(
            """
            page pieces
              table pieces by title
                given
                  title : text
                  width : length
                worked out
                  rail = width + 3 in
              rows of pieces
                title   | width | rail
                "Heron" | 8 in  |
                "Tide"  | 9 in  | 11 in
            """);
    assertThat(formula(filled, "rail of Heron")).isEqualTo("B4+3");
    assertThat(cell(filled, "rail of Tide").getNumericCellValue()).isEqualTo(11);
    assertThat(comment(filled, "rail of Tide")).isEqualTo("entered; the formula gives 12 in");
  }

  @Test
  void names_that_read_like_patterns_are_found_all_the_same() throws IOException {
    live(
        """
        page mouldings
          table mouldings by moulding
            given
              moulding : text
              face : length
          rows of mouldings
            moulding | face
            "cap"    | 1 in
            "c*p"    | 2 in
            "c?p"    | 3 in
        page pieces
          table pieces by title
            given
              title : text
              moulding : row of mouldings
            worked out
              face = moulding.face
          rows of pieces
            title | moulding
            "a"   | "c*p"
            "b"   | "c?p"
            "=1+2" | "cap"
        """);
  }

  @Test
  void a_formula_that_no_spreadsheet_could_take_is_a_value_with_the_reason() throws IOException {
    String deep = "if n > 0 then 1 else ".repeat(70) + "0";
    Filled filled = fill("page p\n  n = 1\n  deep = " + deep + "\n");
    assertThat(comment(filled, "deep")).contains("too deep for a spreadsheet");
    assertThat(cell(filled, "deep").getNumericCellValue()).isEqualTo(1);
  }

  private static final String TABLES =
      """
      page mouldings
        table mouldings by moulding
          given
            moulding : text
            face : length
            lip : length
        rows of mouldings
          moulding   | face     | lip
          "ash cap"  | 1 1/2 in | 1/4 in
          "red oak"  | 2 in     | 1/4 in
          "ferry"    | 38 mm    | 8 mm
      page pieces
        table pieces by title
          given
            title : text
            width : length
            moulding : row of mouldings
        rows of pieces
          title     | width  | moulding
          "Heron"   | 8 in   | "ash cap"
          "Tide"    | 297 mm | "ferry"
          "ferry"   | 20 in  | "ash cap"
      """;

  private static Filled fill(String text) {
    Workbook workbook = TextLoader.of("workbook \"Test\"\ncurrency USD\n" + text).open();
    assertThat(workbook.hasFaults()).as(workbook.diagnostics().toString()).isFalse();
    return workbook.fill();
  }

  /** Every worked-out value is a live formula that comes to the same. */
  private static void live(String text) throws IOException {
    Filled filled = fill(text);
    assertThat(Recalculation.agrees(filled)).isPositive();
    assertThat(Recalculation.fixed(filled)).isEmpty();
    assertThat(filled.faults()).isEmpty();
  }

  private static String formula(Filled filled, String place) throws IOException {
    return cell(filled, place).getCellFormula();
  }

  private static String comment(Filled filled, String place) throws IOException {
    Comment comment = cell(filled, place).getCellComment();
    return comment == null ? "" : comment.getString().getString();
  }

  private static Cell cell(Filled filled, String place) throws IOException {
    try (XSSFWorkbook book = Recalculation.exported(filled)) {
      return Places.cell(book, Places.at(filled, filled.spot(place)));
    }
  }
}
