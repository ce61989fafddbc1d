package org.battenbook.cutting;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.battenbook.book.Column;
import org.battenbook.book.Loader;
import org.battenbook.source.Diagnostic;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.FirstPlans;
import org.battenbook.workbook.TextLoader;
import org.battenbook.workbook.Verdict;
import org.battenbook.workbook.Workbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a stick plan in a workbook comes to. */
class StickPlanStatementTest {
  private static final String TABLES =
      """
      page cutting
        saw kerf = 177/1000 in
        table parts by part
          given
            part     : text
            wood     : text = "ash"
            long     : length
            needed   : count
            frame    : text = ""
            frames   : count = 1
          worked out
            along    = saw kerf
        table stock by stick
          given
            stick    : text
            wood     : text = "ash"
            length   : length
            price    : money = 0 USD
            rack     : count = 0
            any      : yes or no = true
            old      : yes or no = false
            begins   : length = 0 in
          worked out
            left     = 1/4 in
            right    = 1/4 in
            least    = 12 in
        table kept by stick
          given
            stick    : text
            wood     : text
            length   : length
            rack     : count
        stick plan rail
          parts of parts
            length      = long
            quantity    = needed
            material    = wood
            kerf        = along
            matched set = frame
            sets        = frames
          stock of stock
            length         = length
            material       = wood
            price          = price
            on hand        = rack
            can buy more   = any
            offcut         = old
            starts at      = begins
            left trim      = left
            right trim     = right
            minimum offcut = least
          keep in kept
            length   = length
            material = wood
            on hand  = rack
      """;

  /** Ten rails of 18 5/8 in and ten of 22 5/8 in out of sticks of 96 in. */
  private static final String TWENTY_RAILS =
      """
      rows of parts
        part    | long      | needed
        "short" | 18 5/8 in | 10
        "long"  | 22 5/8 in | 10
      rows of stock
        stick | length
        "8 ft" | 96 in
      """;

  private static Filled fill(String rows) {
    Workbook job = open(rows);
    assertThat(job.diagnostics()).filteredOn(Diagnostic::isFault).isEmpty();
    return job.fill();
  }

  private static Workbook open(String rows) {
    return loader(rows).open();
  }

  private static TextLoader loader(String rows) {
    return TextLoader.of("currency USD\n" + TABLES + rows);
  }

  private static String exact(Filled filled, String place) {
    return filled.find(place).exact();
  }

  private static List<String> failed(Filled filled) {
    return filled.requirements().stream().filter(Verdict::isNo).map(Verdict::text).toList();
  }

  // Bound 5 and five sticks: a worked example of the project's design, by hand.
  @Test
  void twenty_rails_come_out_of_five_sticks_and_that_is_proven() {
    Filled filled = fill(TWENTY_RAILS);
    assertThat(exact(filled, "sticks of ash")).isEqualTo("5");
    assertThat(exact(filled, "proven of ash")).isEqualTo("yes");
    assertThat(exact(filled, "parts planned of ash")).isEqualTo("20");
    assertThat(failed(filled)).isEmpty();
  }

  @Test
  void offcuts_that_were_kept_come_first_and_cost_nothing() {
    Filled filled =
        fill(
            """
            rows of parts
              part    | long      | needed
              "short" | 18 5/8 in | 4
            rows of stock
              stick     | length | price  | rack | any   | old
              "8 ft"    | 96 in  | 26 USD |      |       |
              "leftover"| 40 in  | 10 USD | 2    | false | true
            """);
    assertThat(exact(filled, "price of ash")).isEqualTo("0");
    assertThat(filled.find("stock of ash: 1").shown().text()).isEqualTo("leftover");
    assertThat(exact(filled, "sticks of ash")).isEqualTo("2");
    assertThat(exact(filled, "proven of ash")).isEqualTo("yes");
  }

  @Test
  void each_material_is_planned_by_itself() {
    Filled filled =
        fill(
            TWENTY_RAILS
                + """
                  rows of parts
                    part   | wood     | long  | needed
                    "oak a" | "oak"   | 20 in | 3
                  rows of stock
                    stick   | wood  | length
                    "10 ft" | "oak" | 120 in
                  """);
    assertThat(exact(filled, "sticks of ash")).isEqualTo("5");
    assertThat(exact(filled, "sticks of oak")).isEqualTo("1");
    assertThat(filled.find("stock of oak: 1").shown().text()).isEqualTo("10 ft");
  }

  // 4 rails and 3 kerfs take 83.031 in of 95.5 in: 12.292 in are left after one more kerf.
  @Test
  void matched_rails_come_in_turn_out_of_one_stick() {
    Filled filled =
        fill(
            """
            rows of parts
              part    | long      | needed | frame   | frames
              "short" | 18 5/8 in | 10     | "chart" | 5
              "long"  | 22 5/8 in | 10     | "chart" | 5
            rows of stock
              stick | length
              "8 ft" | 96 in
            """);
    assertThat(exact(filled, "sticks of ash")).isEqualTo("5");
    for (int stick = 1; stick <= 5; stick++) {
      String name = "ash: " + stick;
      assertThat(
              List.of(1, 2, 3, 4).stream()
                  .map(number -> filled.find("part of %s: %d".formatted(name, number)))
                  .map(part -> part.shown().text()))
          .containsExactly("short", "long", "short", "long");
      assertThat(filled.find("offcut of " + name).exact()).isEqualTo("3073/250");
    }
  }

  @Test
  void marks_are_measured_from_the_left_end_of_the_whole_stick() {
    Filled filled =
        fill(
            """
            rows of parts
              part    | long  | needed
              "a"     | 20 in | 2
            rows of stock
              stick        | length | begins
              "past knot"  | 50 in  | 30 in
            """);
    assertThat(exact(filled, "start of ash: 1: 1")).isEqualTo("121/4");
    assertThat(exact(filled, "end of ash: 1: 1")).isEqualTo("201/4");
    assertThat(exact(filled, "start of ash: 1: 2")).isEqualTo("50427/1000");
    assertThat(exact(filled, "ends of ash: 1")).isEqualTo("319/4");
  }

  @Test
  void parts_that_fit_no_stick_fail_a_check_with_their_names_and_the_rest_is_planned() {
    Filled filled =
        fill(
            TWENTY_RAILS
                + """
                  rows of parts
                    part       | long   | needed
                    "lintel"   | 99 in  | 1
                    "nothing"  | 0 in   | 2
                    "less"     | -3 in  | 1
                    "splinter" | 1/8 in | 1
                  """);
    assertThat(exact(filled, "sticks of ash")).isEqualTo("5");
    assertThat(exact(filled, "proven of ash")).isEqualTo("no");
    assertThat(failed(filled)).hasSize(2).anyMatch(text -> text.contains("lintel"));
    assertThat(String.join(" ", failed(filled)))
        .contains("'nothing'", "'less'", "'splinter' is shorter than the kerf");
  }

  @Test
  void parts_that_the_sticks_on_hand_are_too_few_for_are_named_with_their_number() {
    Filled filled =
        fill(
            """
            rows of parts
              part  | long  | needed
              "a"   | 40 in | 7
            rows of stock
              stick  | length | rack | any
              "8 ft" | 96 in  | 2    | false
            """);
    assertThat(exact(filled, "parts planned of ash")).isEqualTo("4");
    assertThat(failed(filled))
        .containsExactly("ash: there are too few sticks for 3 × a. Get more.");
  }

  @Test
  void without_stock_that_is_what_is_told() {
    Filled filled = fill("rows of parts\n  part | long | needed\n  \"a\" | 40 in | 7\n");
    assertThat(failed(filled))
        .containsExactly("ash: there is no stock for it; enter stock in 'stock'.");
    assertThat(exact(filled, "parts planned of ash")).isEqualTo("0");
  }

  @Test
  void nothing_to_cut_is_no_plan() {
    Filled filled = fill("");
    assertThat(filled.requirements()).isEmpty();
    assertThat(fill("rows of parts\n  part | long | needed\n  \"a\" | 40 in | 0\n").faults())
        .isEmpty();
  }

  @Test
  void a_million_parts_are_refused_with_the_bound() {
    Filled filled =
        fill(
            """
            rows of parts
              part  | long  | needed
              "a"   | 40 in | 1000000
            rows of stock
              stick  | length
              "8 ft" | 96 in
            """);
    assertThat(failed(filled)).singleElement().asString().contains("100,000", "1,000,000");
  }

  @Test
  void other_tables_are_opened_from_what_is_planned_and_formulas_use_it() {
    Filled filled =
        fill(
            TWENTY_RAILS
                + """
                  table labels by label
                    for each stick of rail sticks
                    given
                      colour : text = "white"
                  lines
                    tags = count of labels
                    cost = sum of price over rail sticks
                  """);
    assertThat(exact(filled, "tags")).isEqualTo("5");
    assertThat(filled.find("cost").shown().text()).isEqualTo("0.00 USD");
  }

  @Test
  void a_plan_that_needs_what_comes_of_it_is_a_circle() {
    Workbook job =
        open(
            """
            table parts
              worked out
                spare = count of rail sticks
            change along of parts = saw kerf + spare * 1 in because "in a circle"
            """);
    assertThat(job.diagnostics().stream().filter(Diagnostic::isFault).map(Diagnostic::code))
        .containsOnly("formula-circle");
  }

  @Test
  void an_edit_of_the_parts_plans_again() {
    Filled after = elevenShort(fill(TWENTY_RAILS));
    assertThat(exact(after, "parts planned of ash")).isEqualTo("21");
    assertThat(exact(after, "proven of ash")).isEqualTo("yes");
    assertThat(failed(after)).isEmpty();
  }

  /** As in a spreadsheet, where a count may be changed and nothing plans. */
  @Test
  void a_plan_that_stays_says_that_its_parts_have_changed() throws Loader.Unreadable {
    Filled after = elevenShort(FirstPlans.fill("job.batten", loader(TWENTY_RAILS)));
    assertThat(exact(after, "proven of ash")).isEqualTo("no");
    assertThat(failed(after))
        .containsExactly("ash: 21 parts are needed and 20 are planned. Plan the job again.");
  }

  private static Filled elevenShort(Filled before) {
    Column needed = (Column) before.spot("needed of short").place();
    return requireNonNull(before.withCell(needed, 0, "11").filled());
  }

  @Test
  void the_same_job_gives_the_same_plan() {
    assertThat(plan(fill(TWENTY_RAILS))).hasSizeGreaterThan(200);
    assertThat(plan(fill(TWENTY_RAILS))).isEqualTo(plan(fill(TWENTY_RAILS)));
  }

  private static List<String> plan(Filled filled) {
    return requireNonNull(filled.book().table("rail cuts")).columns().stream()
        .flatMap(
            column ->
                IntStream.range(0, filled.rows(column.table()).count())
                    .mapToObj(row -> filled.value(column, row).exact()))
        .toList();
  }

  /** Each by one line of the plan that is written otherwise, and what is said of it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          parts of parts          | parts of rods           | no-such-table
          length      = long      | length      = longest   | no-such-column
          length      = long      | width       = long      | no-such-role
          kerf        = along     | length      = along     | role-twice
          quantity    = needed    | kerf        = along     | role-twice
          sets        = frames    | sets        = frame     | plan-kind
          length      = long      | length      = needed    | plan-kind
          price          = price  | price          = stick  | plan-kind
          can buy more   = any    | can buy more   = rack   | plan-kind
          material       = wood   | minimum offcut = least  | role-twice
          on hand  = rack         | price    = rack         | no-such-role
          """)
  void a_plan_that_cannot_be_is_refused_at_its_line(String line, String other, String code) {
    String tables = TABLES.replace(line, other);
    assertThat(tables).isNotEqualTo(TABLES);
    Workbook job = TextLoader.of("currency USD\n" + tables + TWENTY_RAILS).open();
    assertThat(job.diagnostics().stream().filter(Diagnostic::isFault).map(Diagnostic::code))
        .contains(code)
        .hasSizeLessThan(3);
  }

  @Test
  void a_plan_that_lacks_what_it_needs_says_what() {
    Workbook job =
        TextLoader.of(
                "currency USD\n"
                    + TABLES.replace("      quantity    = needed\n", "")
                    + TWENTY_RAILS)
            .open();
    assertThat(job.diagnostics())
        .filteredOn(Diagnostic::isFault)
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.code()).isEqualTo("plan-role-missing");
              assertThat(fault.message()).contains("which column of 'parts' is the quantity");
            });
  }

  @Test
  void rows_of_a_plan_are_not_written_by_hand() {
    Workbook job = open(TWENTY_RAILS + "rows of rail cuts\n  cut | number\n  \"a\" | 1\n");
    assertThat(job.diagnostics().stream().filter(Diagnostic::isFault).map(Diagnostic::code))
        .containsExactly("rows-of-plan");
  }
}
