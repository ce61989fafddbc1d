package org.battenbook.workbook;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.battenbook.bind.Spot;
import org.battenbook.book.Column;
import org.battenbook.book.Table;
import org.battenbook.edit.CellEdit;
import org.battenbook.edit.FormulaEdit;
import org.battenbook.edit.WorkbookEdit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Edits of workbooks with tolerances keep the {@link EditLaw}, where a comparison at worst comes to
 * another answer though both its sides keep their values.
 */
class ToleranceEditsTest {

  /** Makes an edit without reading the text again, and asserts what it decides before and after. */
  private static void assertDecides(
      Map<String, String> texts, String place, String text, String decided, String then) {
    EditLaw law = new EditLaw(texts, ToleranceEditsTest::read);
    Filled filled = read(texts).fill();
    Filled after = requireNonNull(law.check(filled, edit(filled, place, text), place));
    assertThat(after.book()).as("the text is not read again").isSameAs(filled.book());
    assertThat(shown(filled, decided)).isNotEqualTo(then);
    assertThat(shown(after, decided)).isEqualTo(then);
  }

  /** An edit of a cell, or of the formula of a line or of a column of {@code parts}. */
  private static WorkbookEdit edit(Filled filled, String place, String text) {
    if (place.endsWith(" of parts")) {
      Table parts = requireNonNull(filled.book().table("parts"));
      String column = place.replace(" of parts", "");
      return new FormulaEdit(requireNonNull(parts.column(column)), text);
    }
    Spot spot = filled.spot(place);
    return spot.place() instanceof Column column
        ? new CellEdit(column, spot.row(), text)
        : new FormulaEdit(spot.place(), text);
  }

  private static Workbook read(Map<String, String> texts) {
    TextLoader loader = new TextLoader();
    texts.forEach(loader::with);
    return loader.open();
  }

  private static String shown(Filled filled, String place) {
    return filled.find(place).shown().text();
  }

  @Test
  void a_change_that_chooses_by_what_it_replaces() {
    assertDecides(
        Map.of(
            "job.batten",
            """
            workbook "w"
            follows "standards.batten"
            change stop = if stop > 3 mm then tight else loose because "of two"
            """,
            "standards.batten",
            """
            page p
              pick = 4 mm
              tight = 5 mm ± 0.1 mm
              loose = 5 mm ± 0.5 mm
              stop = pick
              fits = stop < 5.2 mm even at worst
            """),
        "pick",
        "2 mm",
        "fits",
        "no");
  }

  /** Makes an edit of a job that follows nothing. */
  private static void assertDecides(
      String job, String place, String text, String decided, String then) {
    assertDecides(Map.of("job.batten", job), place, text, decided, then);
  }

  private static final String ROWS =
      """
      workbook "w"
      to find chosen(x, y) = if tighten then x else y
      page p
        tight = 5 mm ± 0.1 mm
        loose = 5 mm ± 0.5 mm
        limit = 5.2 mm
        tighten = true
        table parts by name
          given
            name : text
            rank : count
            sure : yes or no
            base : row of parts = "one"
          worked out
            value = %s
            fits  = value <= limit even at worst
        rows of parts
          name    | rank | sure | base
          "one"   | 1    | true |
          "two"   | 2    | true | "three"
          "three" | 3    | true |
        lines
          good      = count of parts where value <= limit even at worst
          all good  = good = 3
      """;

  /** What a line reads of a row. A factor or a condition must then be told of any row. */
  private static final String SECOND =
      """
      page second
        second : row of parts = "two"
        second fits = second.value <= limit even at worst
      """;

  /** The value of a row stays 5 mm. Whether it is off by 0.1 or by 0.5 mm is decided elsewhere. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          sure                                  | sure of two   | false | fits of two   | no
          sure                                  | sure of two   | false | good          | 2
          sure                                  | sure of three | false | all good      | no
          sure                                  | sure of two   | false | second fits   | no
          first row or above.sure               | sure of one   | false | fits of two   | no
          first row or above.sure               | sure of one   | false | good          | 2
          base.sure                             | sure of three | false | fits of two   | no
          base.sure                             | sure of three | false | second fits   | no
          base.base.sure                        | sure of one   | false | fits of two   | no
          (count of parts where sure) = 3       | sure of one   | false | fits of two   | no
          (count of parts where base = this) < 3 | base of two  | "one" | fits of one   | no
          (row of parts where sure with largest rank) = "three" | sure of three | false | fits of two | no
          (row of parts where sure with largest rank) = "three" | rank of two   | 4     | good        | 0
          tighten                               | tighten       | false | fits of three | no
          tighten                               | tighten       | false | good          | 0
          tighten                               | tighten       | false | second fits   | no
          """)
  void what_decides_an_error_decides_the_comparison(
      String condition, String place, String text, String decided, String then) {
    String job = ROWS.formatted("if %s then tight else loose".formatted(condition));
    assertDecides(decided.equals("second fits") ? job + SECOND : job, place, text, decided, then);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          tight                 | tight       | 5 mm ± 0.3 mm | fits of two | no  | a larger ±
          loose                 | loose       | 5 mm ± 0.2 mm | good        | 3   | a smaller ±
          loose                 | loose       | 5.2 mm        | good        | 3   | no ± any more
          tight                 | value of parts | loose         | fits of one | no  | another error
          tight                 | value of parts | loose         | second fits | no  | read by a line
          loose                 | value of parts | 5 mm          | fits of one | yes | none any more
          5 mm                  | value of parts | loose         | good        | 0   | one where there was none
          tight                 | fits of parts | value < limit - 0.1 mm even at worst | fits of one | no | another comparison
          loose                 | fits of parts | value <= limit | fits of one | yes | no comparison at worst
          chosen(tight, loose)  | tighten     | false         | fits of two | no  | what a function reads
          tight * (2 / 2)       | value of parts | tight * (10 / 2) - 4 * 5 mm | fits of two | no | another factor
          """)
  void an_edit_of_an_error_decides_the_comparison(
      String value, String place, String text, String decided, String then, String why) {
    assertDecides(ROWS.formatted(value) + SECOND, place, text, decided, then);
  }

  /** A cell that is written over what a formula gives has the same value, and no error. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          across of A | 5 mm           | fits of A | yes | filled by hand
          across of A | 5 mm ± 0.01 mm | fits of A | yes | with a ± of its own
          across of B | 5 mm ± 0.7 mm  | fits of B | no  | which may be larger
          across of B | 1 * loose      | fits of B | no  | by a formula of the cell
          across of C | 5 mm           | fits of D | yes | in a row that another one names
          """)
  void a_cell_decides_its_error(
      String place, String text, String decided, String then, String why) {
    assertDecides(
        """
        workbook "w"
        page p
          loose = 5 mm ± 0.5 mm
          table plain by name
            given
              name : text
          table other by name
            given
              name : text
          table hung by hung
            for each piece of plain
              across = loose
            for each thing of other
              across = 5 mm
            given
              across : length
              base   : row of hung
            worked out
              fits = base.across <= 5.2 mm even at worst
          rows of plain
            name
            "A"
            "C"
            "D"
          rows of other
            name
            "B"
          rows of hung
            hung | across                      | base
            "A"  | 2 * loose - 5 mm ± 0.02 mm | "A"
            "B"  | 4 mm + 1 mm                 | "B"
            "C"  | 1 * loose                   | "C"
            "D"  |                             | "C"
        """,
        place,
        text,
        decided,
        then);
  }

  @Test
  void a_tolerance_may_go_by_what_fits_in_the_row_above() {
    assertDecides(
        """
        workbook "w"
        page p
          limit = 5.2 mm
          table parts by name
            given
              name : text
            worked out
              step = if first row then 0.1 mm else if above.fits then 0.2 mm else 0.3 mm
              cut  = 5 mm ± step
              fits = cut <= limit even at worst
          rows of parts
            name
            "one"
            "two"
            "three"
        """,
        "limit",
        "5.1 mm",
        "fits of three",
        "no");
  }

  @Test
  void a_tolerance_may_go_by_a_comparison_at_worst() {
    assertDecides(
        """
        workbook "w"
        page p
          kerf = 2 mm ± 0.1 mm
          cut  = 5 mm ± (if kerf <= 2.1 mm even at worst then 0.1 mm else 0.5 mm)
          fits = cut <= 5.2 mm even at worst
        """,
        "kerf",
        "2 mm ± 0.2 mm",
        "fits",
        "no");
  }
}
