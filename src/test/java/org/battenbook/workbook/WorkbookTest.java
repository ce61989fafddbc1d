package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Objects;
import org.battenbook.derive.Derivation;
import org.battenbook.derive.Feeds;
import org.battenbook.source.Diagnostic;
import org.battenbook.value.Value;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rules of workbooks: rows, follows, changes, aggregates, rows above, circles. */
class WorkbookTest {
  private static final String SHOP =
      """
      workbook "Shop"
      page allowances
        fitting allowance = 1/8 in  -- room around the package
        standard border = 2 in
      page mouldings
        table mouldings by name
          given
            name : text
            face : length
            lip : length = 1/4 in
          worked out
            used by = count of pieces where moulding = this
            feet = sum of rail * quantity over pieces where moulding = this
        rows of mouldings
          name | face | lip
          "ash cap" | 38 mm | 6 mm
          "oak" | 1 1/2 in |
      page pieces
        table pieces by title
          given
            title : text
            width : length
            quantity : count = 1
            moulding : row of mouldings
            border : length = standard border
          worked out
            mat = width + 2 * border
            rail = mat + fitting allowance + 2 * (moulding.face - moulding.lip) rounded up to 1/16 in
            left = if first row then 0 in else above.left + above.rail
          require rail < 20 in
            else "{title}: {rail} is too long"
          shows: title, rail
        lines
          total = sum of rail * quantity over pieces
          wide = count of pieces where width > 12 in
      """;

  private static final String JOB =
      """
      workbook "Job"
      follows "shop.batten"
      change fitting allowance = fitting allowance + 1/16 in because "the linen panels run fat"
      page pieces
        rows of pieces
          title | width | quantity | moulding | border
          "Tide chart" | 297 mm | 2 | "ash cap" |
          "Fares" | 11 in | | "oak" | 2 3/4 in
          "Broadside" | 17 in | 3 | "Ash Cap" |
      """;

  private static Filled fill(String shop, String job) {
    Workbook workbook = TextLoader.of(job).with("shop.batten", shop).open();
    assertThat(workbook.diagnostics()).isEmpty();
    return workbook.fill();
  }

  private static List<String> codes(String job) {
    return TextLoader.of(job).with("shop.batten", SHOP).open().diagnostics().stream()
        .map(Diagnostic::code)
        .toList();
  }

  @Test
  void columns_follow_from_given_cells_and_defaults() {
    Filled filled = fill(SHOP, JOB);
    assertThat(filled.find("mat of Fares").exact()).isEqualTo("33/2");
    assertThat(filled.find("mat of Tide chart").exact()).isEqualTo("1993/127");
    assertThat(filled.find("quantity of Fares").exact()).isEqualTo("1");
  }

  @Test
  void a_change_reads_the_inherited_value_under_its_own_name() {
    Filled filled = fill(SHOP, JOB);
    assertThat(filled.find("fitting allowance").exact()).isEqualTo("3/16");
    Derivation why = filled.why("fitting allowance");
    Derivation.Changed changed = Objects.requireNonNull(why.changed());
    assertThat(changed.because()).isEqualTo("the linen panels run fat");
    assertThat(changed.from()).isEqualTo("1/8 in");
  }

  @Test
  void rows_of_other_tables_open_with_a_dot_and_round_up() {
    // 297 mm + 4 in + 3/16 in + 2 (38 - 6) mm = 361 mm + 4 3/16 in = 18.4 in
    assertThat(fill(SHOP, JOB).find("rail of Tide chart").exact()).isEqualTo("295/16");
  }

  @Test
  void totals_and_counts_go_over_rows_and_match_this() {
    Filled filled = fill(SHOP, JOB);
    assertThat(filled.find("wide").exact()).isEqualTo("1");
    assertThat(filled.find("used by of ash cap").exact()).isEqualTo("2");
    assertThat(filled.find("used by of oak").exact()).isEqualTo("1");
  }

  @Test
  void the_row_above_is_read_and_the_first_row_begins() {
    Filled filled = fill(SHOP, JOB);
    assertThat(filled.find("left of Tide chart").exact()).isEqualTo("0");
    assertThat(filled.find("left of Fares").exact()).isEqualTo("295/16");
  }

  @Test
  void a_requirement_that_fails_says_so_with_its_values() {
    List<String> broken =
        fill(SHOP, JOB).requirements().stream().filter(Verdict::isNo).map(Verdict::text).toList();
    assertThat(broken).containsExactly("Broadside: 23 3/4 in is too long");
  }

  @Test
  void a_filled_cell_overrides_a_worked_out_column_and_says_what_the_formula_gives() {
    String job = JOB.replace("| border", "| rail").replace("2 3/4 in", "19 in");
    Filled filled = fill(SHOP, job);
    assertThat(filled.find("rail of Fares").exact()).isEqualTo("19");
    assertThat(filled.find("left of Broadside").exact()).isEqualTo("599/16");
    Derivation why = filled.why("rail of Fares");
    assertThat(why.override()).isNotNull();
  }

  @Test
  void a_cell_of_an_inherited_table_is_changed_from_its_own_value() {
    String job =
        JOB.replace(
            "page pieces",
            "change face of mouldings \"oak\" = face - 1/4 in because \"planed again\"\npage pieces");
    assertThat(fill(SHOP, job).find("face of oak").exact()).isEqualTo("5/4");
  }

  @Test
  void what_is_not_filled_in_waits_and_what_needs_it_names_it() {
    String shop = SHOP + "    wall width : length\n    half = wall width / 2\n";
    Filled filled = fill(shop, JOB);
    assertThat(filled.find("half").value()).isEqualTo(new Value.Waiting("wall width", false));
    String job = JOB + "  lines\n    wall width = 8 ft\n";
    assertThat(fill(shop, job).find("half").exact()).isEqualTo("48");
  }

  @Test
  void a_total_over_a_faulty_row_waits() {
    String shop = SHOP.replace("mat = width + 2 * border", "mat = width * width / (width - 11 in)");
    Filled filled = fill(shop, JOB);
    assertThat(filled.find("mat of Fares").value()).isInstanceOf(Value.Fault.class);
    assertThat(filled.find("total").value()).isEqualTo(new Value.Waiting("mat of \"Fares\"", true));
    assertThat(filled.faults()).extracting(FilledValue::words).containsExactly("mat of \"Fares\"");
  }

  @Test
  void feeds_names_what_depends_on_a_value() {
    Filled filled = fill(SHOP, JOB);
    assertThat(filled.feeds("fitting allowance"))
        .extracting(WorkbookTest::name)
        .contains("rail", "left", "total", "feet");
    assertThat(filled.feeds("border of Fares"))
        .filteredOn(fed -> name(fed).equals("rail"))
        .singleElement()
        .satisfies(fed -> assertThat(((Feeds.Fed.Values) fed).rows()).containsExactly(1));
  }

  @Test
  void a_place_that_does_not_exist_gets_near_names() {
    Filled filled = fill(SHOP, JOB);
    assertThatThrownBy(() -> filled.find("fiting alowance"))
        .hasMessageContaining("did you mean 'fitting allowance'?");
    assertThatThrownBy(() -> filled.find("rail of Tide charts"))
        .hasMessageContaining("did you mean 'Tide chart'?");
    assertThatThrownBy(() -> filled.find("rail")).hasMessageContaining("rail of Tide chart");
  }

  @Test
  void circles_are_told_in_order() {
    String job = "workbook \"t\"\npage p\n  a = b + 1\n  b = c + 1\n  c = a + 1\n";
    List<Diagnostic> found = TextLoader.of(job).open().diagnostics();
    assertThat(found).hasSize(1);
    assertThat(found.get(0).message()).contains("'a' needs 'b' needs 'c' needs 'a'");
  }

  @Test
  void ten_thousand_lines_that_need_each_other_are_one_circle_or_one_answer() {
    StringBuilder chain = new StringBuilder("workbook \"t\"\npage p\n");
    for (int i = 0; i < 10_000; i++) {
      chain.append("  ").append(word(i)).append(" = ").append(word(i + 1)).append(" + 1\n");
    }
    String open = chain + "  " + word(10_000) + " = 1\n";
    assertThat(TextLoader.of(open).open().fill().find(word(0)).exact()).isEqualTo("10001");
    String circle = chain + "  " + word(10_000) + " = " + word(0) + "\n";
    assertThat(TextLoader.of(circle).open().diagnostics())
        .extracting(Diagnostic::code)
        .containsExactly("formula-circle");
  }

  /** A name for a number, in letters. */
  private static String word(int number) {
    StringBuilder word = new StringBuilder("x");
    for (int rest = number + 1; rest > 0; rest /= 26) {
      word.append((char) ('a' + rest % 26));
    }
    return word.toString();
  }

  /** Twenty thousand rows, a formula for which goes over them all. */
  private static String manyRows(String formula) {
    StringBuilder job =
        new StringBuilder(
            """
            workbook "t"
            page p
              table t by k
                given
                  k : text
                  w : length
                worked out
                  of all = %s
              rows of t
                k | w
            """
                .formatted(formula));
    for (int i = 0; i < 20_000; i++) {
      job.append("    \"r").append(i).append("\" | ").append(1 + i % 10_000).append(" in\n");
    }
    return job.toString();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "count of t where w = this.w | 2",
        "sum of w over t where w = this.w and w < this.w + 1 in | 2 in",
        "row of t where k = this.k | r0",
        "row of t where w + 0 in = this.w and w < 1 ft with smallest w | r0"
      })
  void rows_of_one_value_are_grouped_once(String formula, String shown) {
    Filled filled = TextLoader.of(manyRows(formula)).open().fill();
    assertThat(filled.find("of all of r0").shown().text()).isEqualTo(shown);
  }

  @Test
  void an_edit_to_what_is_too_much_work_is_refused() {
    Filled filled = TextLoader.of(manyRows("count of t where w = this.w")).open().fill();
    Edit edit =
        filled.withFormula(filled.spot("of all of r0").place(), "count of t where w < this.w");
    assertThat(edit.diagnostics()).extracting(Diagnostic::code).containsExactly("too-much-work");
  }

  @Test
  void each_fault_has_its_code() {
    assertThat(codes("workbook \"t\"\npage p\n  x = 3 in + 2 lb\n"))
        .containsExactly("dimension-mismatch");
    assertThat(codes("workbook \"t\"\npage p\n  x = y + 1\n")).containsExactly("unknown-name");
    assertThat(codes("workbook \"t\"\npage p\n  x = 1\n  x = 2\n"))
        .containsExactly("duplicate-name");
    assertThat(codes("workbook \"t\"\npage p\n  top rail = 1\n  lip = 2\n  x = top rail lip\n"))
        .containsExactly("unknown-name");
    assertThat(codes("workbook \"t\"\nfollows \"job.batten\"\n")).containsExactly("follows-circle");
  }

  @Test
  void a_line_of_the_job_never_captures_an_inherited_name() {
    String job = JOB + "  lines\n    saw kerf = 1 in\n    standard lip = 5 in\n";
    String shop = SHOP.replace("= mat + fitting", "= mat + saw kerf + fitting");
    Workbook workbook = TextLoader.of(job).with("shop.batten", shop).open();
    assertThat(workbook.diagnostics()).extracting(Diagnostic::code).containsExactly("unknown-name");
  }

  @Test
  void functions_of_the_workbook_are_checked_for_each_call() {
    String job =
        """
        workbook "t"
        to find half(x) = x / 2
        page p
          a = half(3 in)
          b = half(5 lb)
          c = half(a) + b
        """;
    assertThat(codes(job)).containsExactly("dimension-mismatch");
    Filled filled = TextLoader.of(job.replace("half(a) + b", "half(a)")).open().fill();
    assertThat(filled.find("c").exact()).isEqualTo("3/4");
  }

  private static String name(Feeds.Fed fed) {
    return fed instanceof Feeds.Fed.Values values
        ? values.place().label()
        : ((Feeds.Fed.Rows) fed).words();
  }

  @Test
  void a_total_in_a_function_reads_its_arguments_for_each_group() {
    Filled filled =
        WrittenJob.filled(
            """
            to find spread(x, y) = sum of (sum of x + y over lids where lid = this.box) over boxes
            page p
              one = spread(1 in, 2 in)
              two = spread(2 in, 2 in)
              table lids by lid
                given
                  lid : text
              rows of lids
                lid
                "a"
                "b"
              table boxes by box
                given
                  box : text
              rows of boxes
                box
                "a"
            """);
    assertThat(WrittenJob.shown(filled, "one")).isEqualTo("3 in");
    assertThat(WrittenJob.shown(filled, "two")).isEqualTo("4 in");
  }
}
