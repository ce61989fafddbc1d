package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * What the standards say of the screws in the wall. The published formulas of withdrawal are
 * checked in {@code acceptance}, in {@code withdrawal.tsv}.
 */
class LoadStandardsTest {
  private static final String RATED = "\"rated\" | 10 lb | 10 lb | ";

  /** A piece that weighs 30 lb, near enough to read a share off, held by an anchor of this row. */
  private static StandardJob held(String anchor) {
    return new StandardJob()
        .change("hung weight of hung frames", "30 lb")
        .rows("loads", "anchors", "anchor | shear | pull | ultimate", anchor)
        .piece("moulding", "\"ash cap\"")
        .hanging("anchor", "\"rated\"");
  }

  @Test
  void an_allowable_rating_is_used_as_it_stands() {
    StandardJob job = held(RATED + "false");
    assertThat(job.shows("factored load of Test")).isEqualTo("10.0 lb");
    assertThat(job.broken()).isEmpty();
  }

  @Test
  void an_ultimate_rating_is_divided_by_the_safety_factor_once() {
    StandardJob job = held(RATED + "true");
    assertThat(job.shows("load per fastener of Test")).isEqualTo("10.0 lb");
    assertThat(job.shows("factored load of Test")).isEqualTo("50.0 lb");
    assertThat(job.broken())
        .containsExactly(
            "Test: each wall fastener carries 10.0 lb down and 10.0 lb out (bearing screws: 3);"
                + " times 5, 50.0 lb and 50.0 lb. rated is rated 10 lb and 10 lb. Use more or"
                + " stronger fasteners.");
  }

  /** Statics: at 45 degrees a bevel pushes as hard as it is loaded; at 30 degrees less. */
  @Test
  void the_pull_is_the_larger_of_the_bevels_push_and_of_overturning() {
    StandardJob flat = held(RATED + "false").change("bevel of cleats \"plywood 1/2\"", "30 deg");
    assertThat(flat.shows("wedge force of Test")).isEqualTo("≈ 17.3 lb");
    assertThat(flat.shows("wall pull of Test")).isEqualTo("≈ 17.3 lb");
    StandardJob deep =
        held(RATED + "false").change("load arm of hung frames", "leaning height * 2");
    assertThat(deep.shows("overturning pull of Test")).endsWith("60.0 lb");
    assertThat(deep.shows("wall pull of Test")).endsWith("60.0 lb");
  }

  @Test
  void fewer_screws_in_wood_carry_more_each() {
    StandardJob job =
        new StandardJob()
            .change("hung weight of hung frames", "30 lb")
            .piece("moulding", "\"ash cap\"")
            .hanging("bearing screws", "1");
    assertThat(job.shows("load per fastener of Test")).isEqualTo("30.0 lb");
    assertThat(job.firing())
        .contains(
            "Test: each wall fastener carries 30.0 lb down and 30.0 lb out (bearing screws: 1),"
                + " and no rating is entered for screws into studs. Enter the rating that its maker"
                + " gives for this wall.");
  }

  @Test
  void a_pull_that_wood_does_not_hold_by_the_published_formulas_is_cautioned() {
    StandardJob job =
        new StandardJob()
            .change("hung weight of hung frames", "300 lb")
            .piece("moulding", "\"ash cap\"");
    assertThat(job.firing())
        .contains(
            "Test: each wall screw is pulled out with 100.0 lb (bearing screws: 3); the formula"
                + " allows ≈ 74.8 lb for 1 in of screw 8 x 2 in sitka spruce. Use longer or more"
                + " screws.");
  }

  @Test
  void a_moment_on_the_wall_beyond_the_limit_of_a_bracket_is_cautioned() {
    StandardJob job =
        new StandardJob()
            .change("hung weight of hung frames", "600 lb")
            .piece("moulding", "\"ash cap\"");
    assertThat(job.firing())
        .anyMatch(
            text ->
                text.startsWith(
                        "Test: its moment on the wall is 562.5 lb*in; the limit to compare"
                            + " (wood block")
                    && text.endsWith(
                        "is 480 lb*in. Use a flatter frame, or ask a builder or engineer."));
  }

  @Test
  void ratings_and_hooks_of_nothing_break_requirements() {
    assertThat(held("\"rated\" | -1 lb | 10 lb | false").broken())
        .contains(
            "rated: ratings must be at least 0 lb; they are -1 lb and 10 lb. Leave a rating"
                + " empty if you do not know it.");
    StandardJob none =
        new StandardJob().piece("moulding", "\"ash cap\"").hanging("bearing screws", "0");
    assertThat(none.broken()).contains("Test: bearing screws must be at least 1; it is 0.");
    StandardJob hooks =
        new StandardJob()
            .rows("cleats", "hangers", "hanger | preference | drop", "\"bare\" | 9 | 0 in");
    assertThat(hooks.broken())
        .contains("bare: drop must be more than 0 in and hooks at least 1; they are 0 in and 1.");
  }

  /** Common practice, no source: what is too narrow for three fasteners hangs otherwise. */
  @Test
  void a_frame_too_small_for_a_cleat_takes_the_first_hanger_that_fits() {
    assertThat(hanger("2 in", "\"cherry bead\"")).isEqualTo("one small hanger");
    assertThat(hanger("3 in", "\"cherry bead\"")).isEqualTo("two small hangers");
  }

  private static String hanger(String width, String moulding) {
    return new StandardJob()
        .rows(
            "pieces",
            "pieces",
            "title | width | height | style | moulding",
            "\"Test\" | %s | 4 in | \"no mat\" | %s".formatted(width, moulding))
        .shows("hanger of Test");
  }

  @Test
  void a_hanger_that_is_named_brings_its_own_drop() {
    StandardJob job =
        new StandardJob()
            .rows(
                "pieces",
                "pieces",
                "title | width | height | style | moulding",
                "\"Test\" | 8 in | 10 in | \"no mat\" | \"ash cap\"")
            .hanging("uses cleat | hanger", "false | \"wire between two rings\"");
    assertThat(List.of(job.shows("drop of Test"), job.shows("bearing screws of Test")))
        .containsExactly("2 in", "2");
  }
}
