package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is cut already: its measured size is used from there on, and a caution gives that size and
 * the formula's.
 */
class MadeStandardsTest {
  private static StandardJob made(String headings, String cells) {
    return new StandardJob().piece("moulding | " + headings, "\"ash cap\" | " + cells);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "window width as cut ~ 7 7/16 in ~ window entered as 7 7/16 in x 9 1/2 in; the formula"
            + " gives 7 1/2 in x 9 1/2 in. Later sizes use the entered size.",
        "mat width as cut ~ 12 15/16 in ~ mat entered as 12 15/16 in x 15 in; the formula gives 13"
            + " in x 15 in. Later sizes use the entered size.",
        "side rail ~ 17 3/4 in ~ rails entered as 15 5/8 in and 17 3/4 in; the formula gives 15"
            + " 5/8 in and 17 5/8 in. Later sizes use the entered rails.",
        "glazing width ~ 12 7/8 in ~ glazing entered as 12 7/8 in x 15 in; the formula gives 13 in"
            + " x 15 in. Later sizes use the entered size.",
        "backing height ~ 14 7/8 in ~ backing entered as 13 in x 14 7/8 in; the formula gives 13"
            + " in x 15 in. Later sizes use the entered size.",
        "dust cover width ~ 15 in ~ dust cover entered as 15 in x 17 3/8 in; the formula gives 15"
            + " 3/8 in x 17 3/8 in. Later sizes use the entered size.",
        "kerf ~ 3/32 in ~ kerf entered as 3/32 in; the saw's kerf is 1/8 in. This frame uses the"
            + " entered kerf.",
        "rabbet depth ~ 9/16 in ~ this lot has thickness 7/8 in and rabbet depth 9/16 in; ash cap"
            + " has 7/8 in and 5/8 in. Later sizes use this lot.",
        "moulding thickness ~ 13/16 in ~ this lot has thickness 13/16 in and rabbet depth 5/8 in;"
            + " ash cap has 7/8 in and 5/8 in. Later sizes use this lot.",
        "face ~ 1 7/16 in ~ this lot has face 1 7/16 in and lip 1/4 in; ash cap has 1 1/2 in and"
            + " 1/4 in. Later sizes use this lot."
      })
  void what_is_measured_says_what_it_contradicts(String column, String measured, String message) {
    assertThat(made(column, measured).firing()).containsExactly("Test: " + message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "frame cleat length ~ 13 in ~ cleats entered as 13 in (frame) and 12 in (wall); the"
            + " formulas give 13 5/8 in and 12 in. Later sizes use the entered sizes.",
        "wall cleat length ~ 12 in ~ cleats entered as 13 5/8 in (frame) and 12 in (wall); the"
            + " formulas give 13 5/8 in and 12 5/8 in. Later sizes use the entered sizes."
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
            "plywood 1/2: long face entered as 1 1/4 in; the formula gives ≈ 1 5/32 in. Later"
                + " sizes use the entered size.");
    assertThat(job.shows("short face of plywood 1/2")).isEqualTo("3/4 in");
    StandardJob kerf = new StandardJob().change("kerf of cleats \"plywood 1/2\"", "1/16 in");
    assertThat(kerf.firing())
        .containsExactly(
            "plywood 1/2: kerf entered as 1/16 in; the saw kerf is 1/8 in. Check"
                + " which blade rips it.");
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
    "slide clearance, 2 in",
    "saw kerf, 1/16 in"
  })
  void an_allowance_moves_nothing_that_is_cut(String allowance, String changed) {
    List<String> columns =
        List.of(
            "window width as cut",
            "mat width as cut",
            "top rail",
            "glazing width",
            "backing width",
            "dust cover width",
            "frame cleat length",
            "wall cleat length",
            "kerf",
            "rabbet opening width",
            "sight width");
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
            "window width as cut | window height as cut | mat width as cut | mat height as cut |"
                + " top rail | side rail | glazing width | glazing height | backing width |"
                + " backing height | dust cover width | dust cover height | kerf",
            "7 1/2 in | 9 1/2 in | 13 in | 15 in | 15 5/8 in | 17 5/8 in | 13 in | 15 in | 13 in |"
                + " 15 in | 15 3/8 in | 17 3/8 in | 1/8 in")
        .hanging("frame cleat length | wall cleat length", "13 5/8 in | 12 5/8 in");
  }

  @Test
  void what_is_all_cut_as_the_standards_have_it_contradicts_nothing() {
    assertThat(allMade().firing()).isEmpty();
    assertThat(allMade().broken()).isEmpty();
  }

  @Test
  void rails_go_by_the_mat_that_is_cut() {
    assertThat(made("mat width as cut", "12 1/2 in").shows("top rail of Test"))
        .isEqualTo("15 1/8 in");
  }

  /** Arithmetic: 2.5 mm of glass, 0.07 in of mat and print, 3/16 in of board, less 1/4 in. */
  @Test
  void the_stack_and_the_wall_go_by_the_lot_that_is_measured() {
    StandardJob lot = made("rabbet depth | moulding thickness", "1/4 in | 3/4 in");
    assertThat(lot.fill().find("stands proud of Test").exact()).isEqualTo("5381/50800");
    assertThat(lot.shows("wood for screw of Test")).isEqualTo("3/4 in");
  }

  @Test
  void sticks_go_by_the_kerf_that_is_measured() {
    assertThat(made("kerf", "0 in").shows("stick use of Test")).isEqualTo("66 1/2 in");
  }
}
