package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is cut already: its size measured back wins from there on, and a caution says what it
 * contradicts, with both numbers.
 */
class MadeStandardsTest {
  private static StandardJob made(String headings, String cells) {
    return new StandardJob().piece("moulding | " + headings, "\"ash cap\" | " + cells);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "window cut across ~ 7 7/16 in ~ its window is cut 7 7/16 in by 9 1/2 in; it would now be"
            + " 7 1/2 in by 9 1/2 in.",
        "mat cut across ~ 12 15/16 in ~ its mat is cut 12 15/16 in by 15 in; it would now be 13 in by"
            + " 15 in.",
        "side rail ~ 17 3/4 in ~ made with rails of 15 5/8 in and 17 3/4 in; they would now be 15 5/8"
            + " in and 17 5/8 in.",
        "lite across ~ 12 7/8 in ~ its lite is cut 12 7/8 in by 15 in; it would now be 13 in by 15"
            + " in.",
        "backing down ~ 14 7/8 in ~ its backing is cut 13 in by 14 7/8 in; it would now be 13 in by"
            + " 15 in.",
        "dust cover across ~ 15 in ~ its dust cover is cut 15 in by 17 3/8 in; it would now be 15 3/8"
            + " in by 17 3/8 in.",
        "kerf ~ 3/32 in ~ cut with a kerf of 3/32 in; the saw's is 1/8 in.",
        "rabbet depth ~ 9/16 in ~ this lot is 7/8 in thick with a rabbet 9/16 in deep; ash cap is 7/8"
            + " in and 5/8 in.",
        "moulding thickness ~ 13/16 in ~ this lot is 13/16 in thick with a rabbet 5/8 in deep; ash cap"
            + " is 7/8 in and 5/8 in.",
        "face ~ 1 7/16 in ~ this lot has a face of 1 7/16 in and a lip of 1/4 in; ash cap is 1 1/2 in"
            + " and 1/4 in."
      })
  void what_is_measured_says_what_it_contradicts(String column, String measured, String message) {
    assertThat(made(column, measured).firing()).containsExactly("Test: " + message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "frame half ~ 13 in ~ its cleat is cut 13 in for the frame and 12 in for the wall; it would"
            + " now be 13 5/8 in and 12 in.",
        "wall half ~ 12 in ~ its cleat is cut 13 5/8 in for the frame and 12 in for the wall; it"
            + " would now be 13 5/8 in and 12 5/8 in."
      })
  void a_cleat_that_is_cut_says_what_it_contradicts(String column, String cut, String message) {
    StandardJob job = new StandardJob().piece("moulding", "\"ash cap\"").hanging(column, cut);
    assertThat(job.firing()).containsExactly("Test: " + message);
  }

  @Test
  void a_cleat_that_is_ripped_says_what_it_contradicts() {
    StandardJob job = new StandardJob().change("long face of cleats \"plywood 1/2\"", "1 1/4 in");
    assertThat(job.firing())
        .containsExactly(
            "plywood 1/2: ripped with a long face of 1 1/4 in; it would now be ≈ 1 5/32 in.");
    assertThat(job.shows("short face of plywood 1/2")).isEqualTo("3/4 in");
    StandardJob kerf = new StandardJob().change("kerf of cleats \"plywood 1/2\"", "1/16 in");
    assertThat(kerf.firing())
        .containsExactly("plywood 1/2: ripped with a kerf of 1/16 in; the saw's is 1/8 in.");
  }

  @ParameterizedTest
  @CsvSource({
    "mat overlap, 1/8 in",
    "standard border, 3 in",
    "fitting allowance, 1/4 in",
    "rail step, 1/4 in",
    "glass step, 3/8 in",
    "mat step, 3/8 in",
    "dust cover inset, 1/2 in",
    "cleat end inset, 2 in",
    "slide room, 2 in",
    "saw kerf, 1/16 in"
  })
  void an_allowance_moves_nothing_that_is_cut(String allowance, String changed) {
    List<String> columns =
        List.of(
            "window cut across",
            "mat cut across",
            "top rail",
            "lite across",
            "backing across",
            "dust cover across",
            "frame half",
            "wall half",
            "kerf",
            "rabbet across",
            "sight across");
    Filled before = allMade().fill();
    StandardJob later = allMade().change(allowance, changed);
    Filled after = later.fill();
    for (String column : columns) {
      String place = column + " of Test";
      assertThat(after.find(place).exact()).as(column).isEqualTo(before.find(place).exact());
    }
    assertThat(later.firing()).isNotEmpty();
  }

  /** A piece of which all is cut as the standards have it. */
  private static StandardJob allMade() {
    return made(
            "window cut across | window cut down | mat cut across | mat cut down | top rail | side rail"
                + " | lite across | lite down | backing across | backing down | dust cover across"
                + " | dust cover down | kerf",
            "7 1/2 in | 9 1/2 in | 13 in | 15 in | 15 5/8 in | 17 5/8 in | 13 in | 15 in | 13 in | 15 in"
                + " | 15 3/8 in | 17 3/8 in | 1/8 in")
        .hanging("frame half | wall half", "13 5/8 in | 12 5/8 in");
  }

  @Test
  void what_is_all_cut_as_the_standards_have_it_contradicts_nothing() {
    assertThat(allMade().firing()).isEmpty();
    assertThat(allMade().broken()).isEmpty();
  }

  @Test
  void rails_go_by_the_mat_that_is_cut() {
    assertThat(made("mat cut across", "12 1/2 in").shows("top rail of Test"))
        .isEqualTo("15 1/8 in");
  }

  /** Arithmetic: 2.5 mm of glass, 0.07 in of mat and print, 3/16 in of board, less 1/4 in. */
  @Test
  void the_stack_and_the_wall_go_by_the_lot_that_is_measured() {
    StandardJob lot = made("rabbet depth | moulding thickness", "1/4 in | 3/4 in");
    assertThat(lot.fill().find("stands proud of Test").exact()).isEqualTo("5381/50800");
    assertThat(lot.shows("wood of Test")).isEqualTo("3/4 in");
  }

  @Test
  void sticks_go_by_the_kerf_that_is_measured() {
    assertThat(made("kerf", "0 in").shows("stick use of Test")).isEqualTo("66 1/2 in");
  }
}
