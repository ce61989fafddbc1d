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
        .change("hung weight of hangings", "30 lb")
        .rows("loads", "anchors", "anchor | shear | pull | ultimate", anchor)
        .piece("moulding", "\"ash cap\"")
        .hanging("anchor", "\"rated\"");
  }

  @Test
  void an_allowable_rating_is_used_as_it_stands() {
    StandardJob job = held(RATED + "false");
    assertThat(job.shows("down to rate of Test")).isEqualTo("10.0 lb");
    assertThat(job.broken()).isEmpty();
  }

  @Test
  void an_ultimate_rating_is_divided_by_the_safety_factor_once() {
    StandardJob job = held(RATED + "true");
    assertThat(job.shows("down on each of Test")).isEqualTo("10.0 lb");
    assertThat(job.shows("down to rate of Test")).isEqualTo("50.0 lb");
    assertThat(job.broken())
        .containsExactly(
            "Test: each of 3 fixings in the wall takes 10.0 lb down and 10.0 lb out; times 5 that"
                + " is 50.0 lb and 50.0 lb, and rated is rated 10 lb and 10 lb.");
  }

  /** Statics: at 45 degrees a bevel pushes as hard as it is loaded; at 30 degrees less. */
  @Test
  void the_pull_is_the_larger_of_the_bevels_push_and_of_overturning() {
    StandardJob flat = held(RATED + "false").change("bevel of cleats \"plywood 1/2\"", "30 deg");
    assertThat(flat.shows("bevel push of Test")).isEqualTo("≈ 17.3 lb");
    assertThat(flat.shows("wall pull of Test")).isEqualTo("≈ 17.3 lb");
    StandardJob deep = held(RATED + "false").change("load arm of hangings", "leaning height * 2");
    assertThat(deep.shows("overturning pull of Test")).endsWith("60.0 lb");
    assertThat(deep.shows("wall pull of Test")).endsWith("60.0 lb");
  }

  @Test
  void fewer_screws_in_wood_carry_more_each() {
    StandardJob job =
        new StandardJob()
            .change("hung weight of hangings", "30 lb")
            .piece("moulding", "\"ash cap\"")
            .hanging("bearing screws", "1");
    assertThat(job.shows("down on each of Test")).isEqualTo("30.0 lb");
    assertThat(job.firing())
        .contains(
            "Test: each of 1 fixings in the wall takes 30.0 lb down and 30.0 lb out; no maker's"
                + " rating is entered for screws into studs.");
  }

  @Test
  void a_pull_that_wood_does_not_hold_by_the_published_formulas_is_cautioned() {
    StandardJob job =
        new StandardJob()
            .change("hung weight of hangings", "300 lb")
            .piece("moulding", "\"ash cap\"");
    assertThat(job.firing())
        .contains(
            "Test: 100.0 lb out of each of 3 fixings; published formulas allow ≈ 74.8 lb to 1 in of"
                + " a 8 x 2 screw in sitka spruce.");
  }

  @Test
  void a_frame_that_turns_what_holds_it_more_than_a_bracket_may_is_cautioned() {
    StandardJob job =
        new StandardJob()
            .change("hung weight of hangings", "600 lb")
            .piece("moulding", "\"ash cap\"");
    assertThat(job.firing())
        .anyMatch(
            text ->
                text.startsWith("Test turns what holds it by 562.5 lb*in; a bracket (wood block")
                    && text.endsWith("may be turned by 480 lb*in."));
  }

  @Test
  void ratings_and_hooks_of_nothing_break_requirements() {
    assertThat(held("\"rated\" | -1 lb | 10 lb | false").broken())
        .contains("rated: ratings of -1 lb and 10 lb say nothing; leave out what is not known.");
    StandardJob none =
        new StandardJob().piece("moulding", "\"ash cap\"").hanging("bearing screws", "0");
    assertThat(none.broken()).contains("Test: no screw bears it.");
    StandardJob hooks =
        new StandardJob()
            .rows("cleats", "hangers", "hanger | choice | drop", "\"bare\" | 9 | 0 in");
    assertThat(hooks.broken()).contains("bare: 1 hooks 0 in below the top hold nothing.");
  }

  /** Common practice, no source: what is too narrow for three fixings hangs otherwise. */
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
            .hanging("takes cleat | hanger", "false | \"wire between two rings\"");
    assertThat(List.of(job.shows("drop of Test"), job.shows("bearing screws of Test")))
        .containsExactly("2 in", "2");
  }
}
