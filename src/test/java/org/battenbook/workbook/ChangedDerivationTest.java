package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.battenbook.derive.Derivation;
import org.battenbook.derive.Derivation.How;
import org.battenbook.derive.Feeds;
import org.junit.jupiter.api.Test;

/** What why and feeds tell below a change, inside of totals, and of the rows of tables. */
class ChangedDerivationTest {
  private static final String SHOP =
      """
      workbook "Shop"
      page shop
        y = 2 in
        table a by name
          given
            name : text
            w    : length
          worked out
            rail = w + y rounded up to 1/16 in
            long = rail * 2
        rows of a
          name | w
          "r1" | 3 in
          "r2" | 2.01 in
      """;

  private static final String BRANCH =
      """
      workbook "Branch"
      follows "shop.batten"
      page branch
        z = 1 in
      change rail of a = rail + z because "the branch cuts wide"
      """;

  private static final String JOB =
      """
      workbook "Job"
      follows "branch.batten"
      page job
        x = 1/32 in
      change rail of a = rail + x because "it runs fat"
      change w of a "r1" = w + 1 in because "it was cut again"
      """;

  private static Filled filled() {
    return TextLoader.of(JOB).with("branch.batten", BRANCH).with("shop.batten", SHOP).open().fill();
  }

  private static Derivation part(Derivation whole, String place) {
    return whole.from().stream()
        .filter(part -> part.place().equals(place))
        .findFirst()
        .orElseThrow(() -> new AssertionError(places(whole).toString()));
  }

  private static List<String> places(Derivation whole) {
    return whole.from().stream().map(Derivation::place).toList();
  }

  @Test
  void why_goes_on_below_each_change() {
    Derivation rail = filled().why("rail of r2");
    assertThat(places(rail)).containsExactly("rail of \"r2\", inherited", "x");
    Derivation branch = rail.from().get(0);
    assertThat(branch.how()).isEqualTo(How.INHERITED);
    assertThat(branch.formula()).isEqualTo("rail + z");
    assertThat(Objects.requireNonNull(branch.changed()).because())
        .isEqualTo("the branch cuts wide");
    assertThat(places(branch)).containsExactly("rail of \"r2\", inherited", "z");
    Derivation shop = branch.from().get(0);
    assertThat(shop.formula()).isEqualTo("w + y rounded up to 1/16 in");
    assertThat(shop.withValues()).isEqualTo("2.01 in + 2 in rounded up to 1/16 in");
    assertThat(shop.shown().text()).isEqualTo("4 1/16 in");
    assertThat(shop.at().place()).isEqualTo("shop.batten:9");
    assertThat(Objects.requireNonNull(shop.rounding()).stepShown().text()).isEqualTo("1/16 in");
    assertThat(places(shop)).containsExactly("w of \"r2\"", "y");
    assertThat(shop.changed()).isNull();
    assertThat(rail.rounding()).isNull();
  }

  @Test
  void what_an_inherited_formula_reads_feeds_the_place() {
    assertThat(fed(filled(), "y")).contains("rail of a", "long of a");
    assertThat(fed(filled(), "w of r2")).contains("rail of a", "long of a");
    assertThat(fed(filled(), "z")).contains("rail of a");
  }

  @Test
  void a_changed_cell_tells_the_line_of_its_old_value() {
    Derivation w = filled().why("w of r1");
    Derivation.Changed changed = Objects.requireNonNull(w.changed());
    assertThat(changed.fromAt().place()).isEqualTo("shop.batten:13");
    assertThat(w.withValues()).isEqualTo("3 in + 1 in");
    Derivation before = part(w, "w of \"r1\", inherited");
    assertThat(before.shown().text()).isEqualTo("3 in");
    assertThat(before.at().place()).isEqualTo("shop.batten:13");
  }

  @Test
  void a_total_inside_a_total_names_the_rows_of_each() {
    String job =
        """
        page p
          table a by name
            given
              name : text
              size : length
          table b by name
            given
              name : text
              y : length
          lines
            total = sum of size + (sum of y over b where y > this.size) over a
          rows of a
            name | size
            "a1" | 1 in
            "a2" | 2 in
            "a3" | 3 in
          rows of b
            name | y
            "b1" | 2.5 in
        """;
    Derivation total = WrittenJob.filled(job).why("total");
    assertThat(total.shown().text()).isEqualTo("11 in");
    assertThat(places(total))
        .containsExactlyInAnyOrder(
            "size of \"a1\"",
            "size of \"a2\"",
            "size of \"a3\"",
            "y of \"b1\"",
            "rows of a",
            "rows of b");
  }

  private static final String OPENED =
      """
      page p
        table pieces by title
          given
            title    : text
            quantity : count = 1
        table places by place
          for each piece of pieces, number to quantity
        rows of pieces
          title   | quantity
          "Tide"  |
          "Ferry" | 3
        lines
          places = count of places
          double = 2 * places
      """;

  @Test
  void a_count_tells_what_opened_its_rows() {
    Derivation rows = WrittenJob.filled(OPENED).why("places").from().get(0);
    assertThat(rows.place()).isEqualTo("rows of places");
    assertThat(rows.shown().text()).isEqualTo("4 rows");
    assertThat(rows.formula()).isEqualTo("opened from pieces by quantity");
    assertThat(rows.how()).isEqualTo(How.ROWS);
    assertThat(places(rows))
        .containsExactly("rows of pieces", "quantity of \"Tide\"", "quantity of \"Ferry\"");
  }

  @Test
  void a_quantity_feeds_the_rows_that_it_opens_and_what_goes_over_them() {
    assertThat(fed(WrittenJob.filled(OPENED), "quantity of Ferry"))
        .containsExactly("rows of places", "places", "double");
  }

  private static final String PLANNED =
      """
      page p
        table pieces by piece
          given
            piece  : text
            long   : length
            needed : count
        table bars by bar
          given
            bar  : text
            size : length
        rows of pieces
          piece | long  | needed
          "leg" | 20 in | 3
        rows of bars
          bar   | size
          "all" | 50 in
        stick plan rail
          parts of pieces
            length   = long
            quantity = needed
          stock of bars
            length = size
        lines
          sticks = count of rail sticks
      """;

  @Test
  void a_count_of_planned_rows_leads_to_what_the_plan_needs() {
    Derivation rows = WrittenJob.filled(PLANNED).why("sticks").from().get(0);
    assertThat(rows.place()).isEqualTo("rows of rail sticks");
    assertThat(rows.formula()).isEqualTo("planned by 'rail'");
    assertThat(places(rows))
        .contains("rows of pieces", "long of \"leg\"", "needed of \"leg\"", "size of \"all\"");
  }

  @Test
  void a_length_that_is_planned_feeds_the_rows_of_the_plan() {
    assertThat(fed(WrittenJob.filled(PLANNED), "long of leg"))
        .contains("rows of rail sticks", "rows of rail cuts", "sticks");
  }

  private static List<String> fed(Filled filled, String place) {
    return filled.feeds(place).stream().flatMap(ChangedDerivationTest::words).toList();
  }

  private static Stream<String> words(Feeds.Fed fed) {
    return fed instanceof Feeds.Fed.Values values
        ? Stream.of(values.place().words())
        : Stream.of(((Feeds.Fed.Rows) fed).words());
  }
}
