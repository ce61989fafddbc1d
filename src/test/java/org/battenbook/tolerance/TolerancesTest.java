package org.battenbook.tolerance;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.battenbook.book.Column;
import org.battenbook.book.ErrorBound;
import org.battenbook.book.Place;
import org.battenbook.unit.Dimension;
import org.battenbook.value.Kind;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.TextLoader;
import org.battenbook.workbook.Workbook;
import org.junit.jupiter.api.Test;

class TolerancesTest {
  private static final Filled FILLED =
      filled(
          """
          workbook "w"
          page p
            kerf = 2 mm ± 0.1 mm
            stop = 5 mm
            both = 3 * kerf - stop
            stepped = kerf rounded up to 1 mm
            square = kerf * kerf
            choice = if stop > 1 mm then kerf else 2 * kerf
          """);

  private static Filled filled(String text) {
    Workbook job = TextLoader.of(text).open();
    assertThat(job.hasFaults()).as(job.diagnostics().toString()).isFalse();
    return job.fill();
  }

  private static Tolerances tolerances(Filled filled) {
    return filled.results().program().tolerances();
  }

  private static Place place(String name) {
    return FILLED.spot(name).place();
  }

  private static Tolerances.Errors errors(String name) {
    return tolerances(FILLED).errors(FILLED.results().decisions(), FILLED.spot(name));
  }

  private static List<String> sources(String name) {
    return errors(name).terms().stream().map(term -> term.place().label()).toList();
  }

  @Test
  void only_a_place_with_a_tolerance_has_a_bound() {
    ErrorBound bound = requireNonNull(tolerances(FILLED).bound(place("kerf")));
    assertThat(bound.of()).isSameAs(place("kerf"));
    assertThat(bound.words()).isEqualTo("tolerance of kerf");
    assertThat(tolerances(FILLED).bound(place("both"))).isNull();
  }

  @Test
  void the_bounds_come_after_all_other_places() {
    List<Place> places = List.copyOf(tolerances(FILLED).book().byPlace().keySet());
    assertThat(places.subList(0, 6)).noneMatch(ErrorBound.class::isInstance);
    assertThat(places.subList(6, places.size())).hasOnlyElementsOfType(ErrorBound.class);
  }

  @Test
  void errors_come_by_each_way_and_end_at_a_rounding() {
    assertThat(sources("both")).containsExactly("kerf");
    assertThat(sources("choice")).containsExactly("kerf", "kerf");
    assertThat(sources("stepped")).isEmpty();
    assertThat(sources("stop")).isEmpty();
  }

  @Test
  void a_product_of_two_errors_is_a_barrier() {
    assertThat(errors("square").terms()).isEmpty();
    assertThat(errors("square").barriers()).singleElement().matches(one -> one.when() == null);
    assertThat(errors("both").barriers()).isEmpty();
  }

  @Test
  void an_edit_elsewhere_leaves_a_bound_as_it_was() {
    Filled edited = requireNonNull(FILLED.withFormula(place("stop"), "6 mm").filled());
    Tolerances before = tolerances(FILLED);
    Tolerances after = tolerances(edited);
    ErrorBound bound = requireNonNull(before.bound(place("kerf")));
    assertThat(after.bound(place("kerf"))).isSameAs(bound);
    assertThat(after.book().place(bound)).isSameAs(before.book().place(bound));
    assertThat(after.book().changesFrom(before.book()).orElseThrow())
        .containsExactly(place("stop"));
  }

  @Test
  void an_edit_of_a_tolerance_changes_its_bound() {
    Filled edited = requireNonNull(FILLED.withFormula(place("kerf"), "2 mm ± 0.2 mm").filled());
    Tolerances before = tolerances(FILLED);
    ErrorBound bound = requireNonNull(before.bound(place("kerf")));
    assertThat(tolerances(edited).book().changesFrom(before.book()).orElseThrow())
        .containsExactly(place("kerf"), bound);
  }

  private static final Filled COMPARED =
      filled(
          """
          workbook "w"
          page p
            kerf = 2 mm ± 0.1 mm
            stop = 5 mm
            wide = 3 * kerf + stop
            fits = wide < 12 mm even at worst
            clear = kerf <= stop even at worst and stop > 1 mm even at worst
            table parts by name
              given
                name : text
                size : length
              worked out
                side = size + kerf
                good = side < 9 mm even at worst
            rows of parts
              name  | size           | side
              "one" | 5 mm ± 0.2 mm  |
              "two" | 6 mm           | 7 mm
          """);

  /** The places that an edit changes, error bounds included, by their labels. */
  private static List<String> changed(Filled before, Place place, String formula) {
    return changed(before, requireNonNull(before.withFormula(place, formula).filled()));
  }

  private static List<String> changed(Filled before, Filled after) {
    return tolerances(after).book().changesFrom(tolerances(before).book()).orElseThrow().stream()
        .map(Place::label)
        .toList();
  }

  private static Place compared(String name) {
    return COMPARED.spot(name).place();
  }

  @Test
  void an_edit_leaves_comparisons_whose_margins_stay() {
    assertThat(changed(COMPARED, compared("stop"), "6 mm")).containsExactly("stop");
    assertThat(changed(COMPARED, compared("kerf"), "3 mm ± 0.1 mm"))
        .containsExactly("kerf", "tolerance of kerf");
    assertThat(changed(COMPARED, compared("wide"), "3 * kerf + stop + 1 mm"))
        .containsExactly("wide");
  }

  @Test
  void an_edit_changes_comparisons_whose_margins_change() {
    assertThat(changed(COMPARED, compared("wide"), "4 * kerf")).containsExactly("wide", "fits");
    assertThat(changed(COMPARED, compared("wide"), "4 * stop")).containsExactly("wide", "fits");
    assertThat(changed(COMPARED, compared("stop"), "5 mm + kerf - 2 mm"))
        .containsExactly("stop", "fits", "clear");
    assertThat(changed(COMPARED, compared("fits"), "wide < 13 mm even at worst"))
        .containsExactly("fits");
  }

  @Test
  void an_edit_back_changes_the_same_places() {
    Filled edited = requireNonNull(COMPARED.withFormula(compared("wide"), "4 * kerf").filled());
    assertThat(changed(edited, compared("wide"), "3 * kerf + stop"))
        .containsExactly("wide", "fits");
    assertThat(changed(edited, compared("stop"), "6 mm")).containsExactly("stop");
  }

  @Test
  void a_comparison_needs_the_bounds_of_what_it_compares() {
    assertThat(needs(COMPARED, compared("fits"))).containsExactly("tolerance of kerf");
    Filled plain = requireNonNull(COMPARED.withFormula(compared("fits"), "wide < 12 mm").filled());
    assertThat(needs(plain, compared("fits"))).isEmpty();
    assertThat(needs(COMPARED, compared("stop"))).isEmpty();
  }

  /** What a place needs for its comparisons to hold even at worst. */
  private static List<String> needs(Filled filled, Place place) {
    return tolerances(filled).book().place(place).furtherNeeds().stream()
        .map(need -> need.place().label())
        .toList();
  }

  @Test
  void an_edited_cell_changes_its_own_bounds_alone() {
    Column side = (Column) COMPARED.spot("side of two").place();
    assertThat(changed(COMPARED, requireNonNull(COMPARED.withCell(side, 1, "8 mm").filled())))
        .containsExactly("side", "side as entered");
    Column size = (Column) COMPARED.spot("size of one").place();
    assertThat(changed(COMPARED, requireNonNull(COMPARED.withCell(size, 0, "4 mm").filled())))
        .containsExactly("size", "tolerance of size");
  }

  @Test
  void an_edit_leaves_whether_an_opening_decides() {
    Filled opened =
        filled(
            """
            workbook "w"
            page p
              stop = 5 mm
              table pieces by title
                given
                  title : text
                  size  : length
              table hung by hung
                for each piece of pieces
                  across = piece.size
                given
                  across : length
                worked out
                  twice = 2 * across
                  fits  = twice < 12 mm even at worst
              rows of pieces
                title | size
                "A"   | 5 mm ± 0.2 mm
                "B"   | 6 mm
              rows of hung
                hung | across
                "B"  | 5 mm
            """);
    assertThat(changed(opened, opened.spot("stop").place(), "6 mm")).containsExactly("stop");
    Column size = (Column) opened.spot("size of A").place();
    assertThat(changed(opened, requireNonNull(opened.withCell(size, 0, "4 mm").filled())))
        .containsExactly("size", "tolerance of size");
    Column across = (Column) opened.spot("across of B").place();
    assertThat(changed(opened, requireNonNull(opened.withCell(across, 1, "7 mm").filled())))
        .containsExactly("across", "across from the 'for each'");
  }

  @Test
  void a_place_that_no_error_reaches_has_no_further_bounds() {
    assertThat(tolerances(COMPARED).book().places())
        .extracting(checked -> checked.place().label())
        .containsExactly(
            "kerf",
            "stop",
            "wide",
            "fits",
            "clear",
            "name",
            "size",
            "side",
            "good",
            "tolerance of kerf",
            "tolerance of size",
            "side as entered");
  }

  /** A factor of 3 mm makes an area of a length: its error is multiplied by a length. */
  @Test
  void a_coefficient_is_of_the_kind_of_the_value_over_that_of_the_error() {
    Filled areas =
        filled(
            """
            workbook "w"
            page p
              size  = 2 mm ± 0.1 mm
              wide  = 3 mm
              area  = size * wide
              ratio = size / wide
              back  = area / wide / wide * wide
            """);
    assertThat(kind(areas, "area")).isEqualTo(new Kind.Measured(Dimension.LENGTH));
    assertThat(kind(areas, "ratio"))
        .isEqualTo(new Kind.Measured(Dimension.NONE.dividedBy(Dimension.LENGTH)));
    assertThat(kind(areas, "back")).isEqualTo(Kind.NUMBER);
  }

  private static Kind kind(Filled filled, String place) {
    return tolerances(filled)
        .errors(filled.results().decisions(), filled.spot(place))
        .terms()
        .get(0)
        .coefficient()
        .kind();
  }

  @Test
  void of_what_is_no_quantity_there_are_no_errors() {
    assertThat(tolerances(COMPARED).errors(COMPARED.results().decisions(), COMPARED.spot("fits")))
        .isEqualTo(new Tolerances.Errors(List.of(), List.of()));
  }

  /** The conditions and factors of each way that no formula can tell, each once. */
  @Test
  void a_way_whose_condition_cannot_be_told_is_a_barrier() {
    Filled conditional =
        filled(
            """
            workbook "w"
            page p
              kerf = 2 mm ± 0.1 mm
              thin = if kerf < 3 mm even at worst then kerf else 2 * kerf
              both = (if kerf < 3 mm even at worst then kerf * kerf else 1 mm^2) / 1 mm
            """);
    Tolerances.Errors errors =
        tolerances(conditional).errors(conditional.results().decisions(), conditional.spot("thin"));
    assertThat(errors.terms()).isEmpty();
    assertThat(errors.barriers())
        .singleElement()
        .satisfies(
            barrier -> {
              assertThat(barrier.when()).isNull();
              assertThat(barrier.at().text()).isEqualTo("kerf < 3 mm even at worst");
              assertThat(barrier.what())
                  .startsWith("a value that depends on another comparison at worst");
            });
    assertThat(conditional.errors("both").open())
        .singleElement()
        .asString()
        .contains("a product of two values with tolerances");
  }

  /** What stood in the cell may have been off, and that is not known any more. */
  @Test
  void a_change_of_a_cell_that_reads_what_it_changes_is_a_barrier_in_its_row() {
    Filled changed =
        filled(
            """
            workbook "w"
            page p
              table parts by name
                given
                  name : text
                  size : length
                worked out
                  cut   = size + 1 mm ± 0.3 mm
                  twice = 2 * cut
              rows of parts
                name  | size          | cut
                "one" | 5 mm ± 0.2 mm |
                "two" | 6 mm          | 8 mm ± 0.1 mm
                "six" | 7 mm          |
            change cut of parts "one" = cut + 1 mm ± 0.05 mm because "it was planed again"
            change cut of parts "two" = cut + 1 mm because "so was this"
            change size of parts "six" = size + 1 mm because "it was cut again"
            """);
    for (String place : List.of("cut of one", "cut of two", "twice of one", "twice of two")) {
      assertThat(changed.errors(place).open())
          .as(place)
          .singleElement()
          .asString()
          .contains("a change that reads the cell it changes");
    }
    assertThat(changed.errors("size of six").open()).hasSize(1);
    assertThat(changed.errors("size of one").open()).isEmpty();
  }
}
