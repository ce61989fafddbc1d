package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the standards ask of mats; their sizes are checked in {@code acceptance}. */
class MatStandardsTest {
  private static final String PLAIN = "\"ash cap\" | ";

  /** A piece of 8 by 10 in with its windows in a list; its mat is 13 by 15 in. */
  private static StandardJob listed(String... windows) {
    StandardJob job = new StandardJob().piece("moulding", "\"ash cap\"");
    String[] rows = new String[windows.length + 1];
    rows[0] = "window | piece | left | top | width | height";
    for (int i = 0; i < windows.length; i++) {
      rows[i + 1] = "\"" + (char) ('a' + i) + "\" | \"Test\" | " + windows[i];
    }
    return job.rows("windows", "windows", rows);
  }

  @Test
  void a_window_of_the_list_lies_inside_its_mat() {
    assertThat(listed("2 in | 2 in | 4 in | 4 in").broken()).isEmpty();
    assertThat(listed("2 in | 2 in | 10 3/4 in | 4 in").broken())
        .containsExactly(
            "a: it must be at least 1/2 in from each edge of mat 13 in x 15 in of Test; it is 2 in"
                + " from left, 2 in from top, 1/4 in from right and 9 in from bottom. Move it.");
  }

  @ParameterizedTest
  @CsvSource({
    "6 1/2 in | 2 in, ''",
    "6 7/16 in | 2 in, a b",
    "2 in | 6 1/2 in, ''",
    "2 in | 6 7/16 in, a b",
    "3 in | 3 in, a b"
  })
  void no_two_windows_of_a_mat_are_nearer_than_the_minimum_gap(String place, String nearOnes) {
    List<String> broken = listed("2 in | 2 in | 4 in | 4 in", place + " | 4 in | 4 in").broken();
    assertThat(broken.stream().map(text -> text.substring(0, 1)))
        .containsExactly(nearOnes.isEmpty() ? new String[0] : nearOnes.split(" "));
    assertThat(broken)
        .allMatch(
            text ->
                text.endsWith(
                    ": it is less than 1/2 in from another window of Test."
                        + " Move one of them."));
  }

  @Test
  void windows_of_two_mats_may_lie_in_the_same_place() {
    StandardJob job =
        listed("2 in | 2 in | 4 in | 4 in")
            .rows(
                "pieces",
                "pieces",
                "title | width | height | moulding",
                "\"Other\" | 8 in | 10 in | \"ash cap\"")
            .rows(
                "windows",
                "windows",
                "window | piece | left | top | width | height",
                "\"z\" | \"Other\" | 2 in | 2 in | 4 in | 4 in");
    assertThat(job.broken()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "0 in | 4 in ~ a: inner width and height must be more than 0 in; they are 0 in and 4 in."
            + " Make the window larger than 0 in x 4 in.",
        "4 in | -1 in ~ a: inner width and height must be more than 0 in; they are 4 in and -1 in."
            + " Make the window larger than 4 in x -1 in."
      })
  void a_window_of_no_size_breaks_a_requirement(String size, String message) {
    assertThat(listed("2 in | 2 in | " + size).broken()).contains(message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "windows across ~ 0 ~ Test: windows across and windows down must be at least 1; they are 0"
            + " and 1.",
        "windows across | gap ~ 2 | 1/4 in ~ Test: gap must be at least 1/2 in; it is 1/4 in.",
        "windows down | style ~ 2 | \"no mat\" ~ Test: several windows need a mat, and no mat has"
            + " none. Choose a style with a mat.",
        "overlap ~ 5 in ~ Test: window width and height must be more than 0 in; they are -2 in and"
            + " 0 in. Use a smaller overlap than 5 in.",
        "overlap ~ -1/4 in ~ Test: overlap -1/4 in and reveal 0 in cannot be negative; enter 0 in"
            + " for none.",
        "paper margin ~ -1 in ~ Test: signature space 0 in and paper margin -1 in cannot be"
            + " negative; enter 0 in for none.",
        "border ~ -1 in ~ Test: window group 7 1/2 in x 9 1/2 in does not fit mat 5 1/2 in x 7 1/2"
            + " in. Side border -1 in, top border -1 in and added at bottom 0 in cannot be"
            + " negative. Use a larger mat.",
        "added at bottom ~ -1/4 in ~ Test: window group 7 1/2 in x 9 1/2 in does not fit mat 13 in"
            + " x 14 3/4 in. Side border 2 3/4 in, top border 2 3/4 in and added at bottom -1/4 in"
            + " cannot be negative. Use a larger mat."
      })
  void a_mat_that_cannot_be_cut_breaks_a_requirement(
      String headings, String cells, String message) {
    assertThat(new StandardJob().piece("moulding | " + headings, PLAIN + cells).broken())
        .contains(message);
  }

  @Test
  void a_window_of_the_list_that_is_cut_says_what_it_contradicts() {
    StandardJob job =
        new StandardJob()
            .piece("moulding", "\"ash cap\"")
            .rows(
                "windows",
                "windows",
                "window | piece | left | top | width | height | width as cut",
                "\"a\" | \"Test\" | 2 in | 2 in | 4 in | 4 in | 4 1/16 in");
    assertThat(job.firing())
        .containsExactly(
            "a: entered as 4 1/16 in x 4 in; the formula gives 4 in x 4 in. Later"
                + " sizes use the entered size.");
    assertThat(job.shows("right of a")).isEqualTo("6 1/16 in");
  }

  /** Plane geometry: a floated sheet ends inside its window, an image's goes on behind the mat. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "style ~ \"floated sheet\" ~ 3 in ~ 2 1/2 in",
        "style | paper margin ~ \"image with reveal\" | 1 1/2 in ~ 6 in ~ 1 in"
      })
  void a_window_of_the_list_covers_its_sheet_as_its_style_does(
      String headings, String cells, String paper, String line) {
    StandardJob job =
        new StandardJob()
            .piece("moulding | " + headings, PLAIN + cells)
            .rows(
                "windows",
                "windows",
                "window | piece | left | top | width | height",
                "\"a\" | \"Test\" | 2 in | 2 in | 4 in | 4 in");
    assertThat(job.shows("paper width of a")).isEqualTo(paper);
    assertThat(job.shows("placement line from left of a")).isEqualTo(line);
    assertThat(job.broken()).isEmpty();
  }

  @Test
  void a_list_beside_a_grid_breaks_a_requirement() {
    StandardJob job =
        new StandardJob()
            .piece("moulding | windows across", PLAIN + 2)
            .rows(
                "windows",
                "windows",
                "window | piece | left | top | width | height",
                "\"a\" | \"Test\" | 2 in | 2 in | 4 in | 4 in");
    assertThat(job.broken())
        .containsExactly(
            "Test: its windows are rows of the table windows and also a grid of 2 x"
                + " 1. Keep one of the two.");
  }

  @Test
  void sheets_that_lap_over_one_another_behind_a_grid_are_cautioned() {
    StandardJob job =
        new StandardJob().piece("moulding | windows across | paper margin", PLAIN + "2 | 1 in");
    assertThat(job.firing())
        .contains(
            "Test: paper 10 in x 12 in laps over the next paper; windows repeat every 8 1/2 in"
                + " across and every 10 1/2 in down. Use a wider gap.");
  }

  /** E. Stapel, teaching handout: 2 in on boards up to 11 by 14 in, 3 in on larger ones. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "8 in | 4 7/8 in | 2 1/4 in ~ ''",
        "4 7/8 in | 8 in | 2 1/4 in ~ ''",
        "10 1/2 in | 4 7/8 in | 2 1/4 in ~ Test: borders are 2 1/4 in at the sides and 2 1/4 in at"
            + " the top; recommended 3 in on a mat of 14 1/2 in x 8 7/8 in.",
        "10 in | 8 in | 3 in ~ ''"
      })
  void the_guide_to_borders_asks_more_of_larger_boards(String sizes, String caution) {
    StandardJob job =
        new StandardJob()
            .change("follow border guide", "true")
            .rows(
                "pieces",
                "pieces",
                "title | width | height | border | moulding",
                "\"Test\" | " + sizes + " | \"ash cap\"");
    assertThat(job.firing().stream().filter(text -> text.contains("recommended")))
        .containsExactly(caution.isEmpty() ? new String[0] : new String[] {caution});
  }

  @Test
  void the_guide_to_borders_says_nothing_unless_it_is_followed() {
    assertThat(new StandardJob().piece("moulding", "\"ash cap\"").firing()).isEmpty();
  }

  /**
   * Library of Congress, Guide to Preservation Matting and Framing: at least 4-ply, pH 7 to 8.5. A
   * guild of framers, as quoted at oldfortframing.co.uk: at least 1.1 mm.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "4 | 7 | 1.1 mm ~ ''",
        "4 | 8.5 | 0.06 in ~ ''",
        "0 | 0 | 0.06 in ~ ''",
        "3 | 8 | 0.06 in ~ Test: thin has 3 ply; minimum for a mat 4.",
        "4 | 6.9 | 0.06 in ~ Test: thin has pH 6.9; a board that touches art needs pH 7 to 8.5.",
        "4 | 8.6 | 0.06 in ~ Test: thin has pH 8.6; a board that touches art needs pH 7 to 8.5.",
        "4 | 8 | 0.04 in ~ Test: thin is 0.040 in thick; minimum for a mat ≈ 0.043 in."
      })
  void boards_that_do_art_no_good_are_cautioned(String board, String caution) {
    StandardJob job =
        new StandardJob()
            .rows(
                "materials",
                "boards",
                "board | weight by area | ply | pH | thickness",
                "\"thin\" | 1 kg/m^2 | " + board)
            .piece("moulding | mat board", "\"ash cap\" | \"thin\"");
    assertThat(job.firing())
        .containsExactly(caution.isEmpty() ? new String[0] : new String[] {caution});
  }

  @Test
  void an_acid_backing_is_cautioned() {
    StandardJob job =
        new StandardJob()
            .change("pH of boards \"foam board\"", "5")
            .piece("moulding", "\"ash cap\"");
    assertThat(job.firing())
        .containsExactly("Test: foam board has pH 5; a board that touches art needs pH 7 to 8.5.");
  }
}
