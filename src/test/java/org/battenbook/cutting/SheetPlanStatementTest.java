package org.battenbook.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.battenbook.source.Diagnostic;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.TextLoader;
import org.battenbook.workbook.Verdict;
import org.battenbook.workbook.Workbook;
import org.junit.jupiter.api.Test;

/** What a sheet plan in a workbook comes to. */
class SheetPlanStatementTest {
  private static final String TABLES =
      """
      currency USD
      page cutting
        table panes by pane
          given
            pane   : text
            kind   : text = "glass"
            wide   : length
            high   : length
            needed : count = 1
            turns  : yes or no = true
        table stock by sheet
          given
            sheet  : text
            kind   : text = "glass"
            wide   : length
            high   : length
            price  : money = 10 USD
            rack   : count = 0
            any    : yes or no = true
            blade  : length = 0 in
            edge   : length = 0 in
            least  : length = 6 in
        sheet plan glazing
          stages = 3
          parts of panes
            width      = wide
            height     = high
            quantity   = needed
            material   = kind
            can rotate = turns
          stock of stock
            width          = wide
            height         = high
            material       = kind
            price          = price
            on hand        = rack
            can buy more   = any
            kerf           = blade
            trim           = edge
            minimum offcut = least
      """;

  private static Filled fill(String rows) {
    Workbook job = TextLoader.of(TABLES + rows).open();
    assertThat(job.diagnostics()).filteredOn(Diagnostic::isFault).isEmpty();
    Filled filled = job.fill();
    assertThat(filled.faults()).isEmpty();
    return filled;
  }

  private static List<String> failed(Filled filled) {
    return filled.requirements().stream().filter(Verdict::isNo).map(Verdict::text).toList();
  }

  // Four of 10 by 20 in fill one of 20 by 40 in: proven by the area.
  @Test
  void parts_that_fill_a_sheet_come_out_of_one_and_that_is_proven() {
    Filled filled =
        fill(
            """
            rows of panes
              pane | wide  | high  | needed
              "a"  | 10 in | 20 in | 4
            rows of stock
              sheet   | wide  | high
              "large" | 20 in | 40 in
            """);
    assertThat(filled.find("sheets of glass").exact()).isEqualTo("1");
    assertThat(filled.find("proven of glass").exact()).isEqualTo("yes");
    assertThat(filled.find("parts area of glass").exact()).isEqualTo("800");
    assertThat(filled.find("cuts of glass").exact()).isEqualTo("3");
    assertThat(failed(filled)).isEmpty();
  }

  @Test
  void the_kerf_and_the_trim_take_their_part() {
    String rows =
        """
        rows of panes
          pane | wide  | high  | needed
          "a"  | 10 in | 20 in | 4
        rows of stock
          sheet   | wide     | high     | blade  | edge
          "large" | %s | %s | 1/8 in | 1/4 in
        """;
    Filled enough = fill(rows.formatted("20 5/8 in", "40 5/8 in"));
    assertThat(enough.find("sheets of glass").exact()).isEqualTo("1");
    assertThat(enough.find("left of glass: 1: 1").exact()).isEqualTo("1/4");
    Filled short16th = fill(rows.formatted("20 9/16 in", "40 5/8 in"));
    assertThat(short16th.find("sheets of glass").exact()).isEqualTo("2");
  }

  @Test
  void what_has_a_grain_is_not_rotated() {
    String rows =
        """
        rows of panes
          pane | wide  | high  | turns
          "a"  | 30 in | 10 in | %s
        rows of stock
          sheet   | wide  | high
          "large" | 20 in | 40 in
        """;
    assertThat(fill(rows.formatted("true")).find("rotated of glass: 1: 1").exact())
        .isEqualTo("yes");
    assertThat(failed(fill(rows.formatted("false"))))
        .containsExactly(
            "glass: a fits no sheet. Get larger sheets, let the part rotate, or make it smaller.");
  }

  @Test
  void limits_on_hand_and_absurd_sizes_are_told_and_the_rest_is_planned() {
    Filled filled =
        fill(
            """
            rows of panes
              pane   | wide  | high  | needed
              "a"    | 20 in | 40 in | 3
              "none" | 0 in  | 4 in  |
            rows of stock
              sheet   | wide  | high  | rack | any
              "large" | 20 in | 40 in | 2    | false
            """);
    assertThat(filled.find("parts planned of glass").exact()).isEqualTo("2");
    assertThat(failed(filled)).hasSize(2).first().asString().contains("too few sheets for a");
    assertThat(failed(filled).get(1)).contains("'none'");
  }

  @Test
  void the_cheaper_of_several_sizes_is_taken() {
    Filled filled =
        fill(
            """
            rows of panes
              pane | wide  | high
              "a"  | 10 in | 10 in
            rows of stock
              sheet   | wide  | high  | price
              "large" | 40 in | 40 in | 30 USD
              "small" | 12 in | 12 in | 4 USD
            """);
    assertThat(filled.find("stock of glass: 1").shown().text()).isEqualTo("small");
    assertThat(filled.find("price of glass").shown().text()).isEqualTo("4.00 USD");
  }

  @Test
  void what_is_left_is_kept_where_neither_side_is_too_short() {
    Filled filled =
        fill(
            """
            rows of panes
              pane | wide  | high
              "a"  | 10 in | 36 in
            rows of stock
              sheet   | wide  | high
              "large" | 20 in | 40 in
            """);
    assertThat(filled.find("kept area of glass").exact()).isIn("360", "400");
  }
}
