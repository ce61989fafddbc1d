package org.battenbook.tolerance;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.battenbook.book.ErrorBound;
import org.battenbook.book.Place;
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
}
