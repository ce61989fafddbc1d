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
            "a: from 2 in to 12 3/4 in across and 2 in to 6 in down, it does not lie 1/2 in inside"
                + " the mat of Test, 13 in by 15 in.");
  }

  @ParameterizedTest
  @CsvSource({
    "6 1/2 in | 2 in, ''",
    "6 7/16 in | 2 in, a b",
    "2 in | 6 1/2 in, ''",
    "2 in | 6 7/16 in, a b",
    "3 in | 3 in, a b"
  })
  void no_two_windows_of_a_mat_are_nearer_than_the_least_gap(String place, String nearOnes) {
    List<String> broken = listed("2 in | 2 in | 4 in | 4 in", place + " | 4 in | 4 in").broken();
    assertThat(broken.stream().map(text -> text.substring(0, 1)))
        .containsExactly(nearOnes.isEmpty() ? new String[0] : nearOnes.split(" "));
    assertThat(broken)
        .allMatch(text -> text.endsWith(": it lies less than 1/2 in from another window of Test."));
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
        "0 in | 4 in ~ a: no window is left of 0 in by 4 in.",
        "4 in | -1 in ~ a: no window is left of 4 in by -1 in."
      })
  void a_window_of_no_size_breaks_a_requirement(String size, String message) {
    assertThat(listed("2 in | 2 in | " + size).broken()).contains(message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "windows across ~ 0 ~ Test: 0 by 1 windows are none.",
        "windows across | gap ~ 2 | 1/4 in ~ Test: its windows are 1/4 in apart, less than 1/2 in.",
        "windows down | style ~ 2 | \"no mat\" ~ Test: several windows need a mat; no mat has none.",
        "overlap ~ 5 in ~ Test: no window is left with an overlap of 5 in on each edge of 8 in by 10"
            + " in.",
        "overlap ~ -1/4 in ~ Test: an overlap of -1/4 in and a reveal of 0 in: less than nothing is"
            + " neither.",
        "paper margin ~ -1 in ~ Test: a signature room of 0 in and a paper margin of -1 in: less"
            + " than nothing is no room.",
        "border ~ -1 in ~ Test: a mat of 5 1/2 in by 7 1/2 in has no room for its window of 7 1/2 in"
            + " by 9 1/2 in.",
        "added at bottom ~ -1/4 in ~ Test: a mat of 13 in by 14 3/4 in has no room for its window of"
            + " 7 1/2 in by 9 1/2 in."
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
                "window | piece | left | top | width | height | cut across",
                "\"a\" | \"Test\" | 2 in | 2 in | 4 in | 4 in | 4 1/16 in");
    assertThat(job.firing())
        .containsExactly("a: it is cut 4 1/16 in by 4 in; it would now be 4 in by 4 in.");
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
      String headings, String cells, String sheet, String register) {
    StandardJob job =
        new StandardJob()
            .piece("moulding | " + headings, PLAIN + cells)
            .rows(
                "windows",
                "windows",
                "window | piece | left | top | width | height",
                "\"a\" | \"Test\" | 2 in | 2 in | 4 in | 4 in");
    assertThat(job.shows("sheet across of a")).isEqualTo(sheet);
    assertThat(job.shows("register from left of a")).isEqualTo(register);
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
        .containsExactly("Test: its windows stand in a list and in a grid of 2 by 1: leave one.");
  }

  @Test
  void sheets_that_lap_over_one_another_behind_a_grid_are_cautioned() {
    StandardJob job =
        new StandardJob().piece("moulding | windows across | paper margin", PLAIN + "2 | 1 in");
    assertThat(job.firing())
        .contains(
            "Test: sheets of 10 in by 12 in lap over one another behind windows 8 1/2 in and 10 1/2"
                + " in apart from edge to edge.");
  }

  /** E. Stapel, teaching handout: 2 in on boards up to 11 by 14 in, 3 in on larger ones. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "8 in | 4 7/8 in | 2 1/4 in ~ ''",
        "4 7/8 in | 8 in | 2 1/4 in ~ ''",
        "10 1/2 in | 4 7/8 in | 2 1/4 in ~ Test: on a board of 14 1/2 in by 8 7/8 in borders of 2 1/4 in at the"
            + " sides and 2 1/4 in at the top are narrower than 3 in.",
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
    assertThat(job.firing().stream().filter(text -> text.contains("narrower")))
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
        "3 | 8 | 0.06 in ~ Test: thin has 3 ply; a mat has at least 4.",
        "4 | 6.9 | 0.06 in ~ Test: thin has a pH of 6.9; what touches art has 7 to 8.5.",
        "4 | 8.6 | 0.06 in ~ Test: thin has a pH of 8.6; what touches art has 7 to 8.5.",
        "4 | 8 | 0.04 in ~ Test: thin is 0.040 in thick; a mat has at least ≈ 0.043 in."
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
        .containsExactly("Test: foam board has a pH of 5; what touches art has 7 to 8.5.");
  }
}
