package org.battenbook.workbook;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import java.util.stream.IntStream;
import org.battenbook.book.Column;
import org.battenbook.book.Table;
import org.battenbook.derive.ErrorBudget;
import org.battenbook.number.Rational;
import org.battenbook.source.Diagnostic;
import org.battenbook.unit.Quantity;
import org.battenbook.unit.Unit;
import org.battenbook.unit.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far values may be off, and comparisons that hold even then. */
class TolerancesTest {
  private static final Unit MM = Units.find("mm").orElseThrow();

  /** A gap between parts: metricmech.com, its example of a tolerance stack-up. */
  private static final String GAP =
      """
      workbook "gap"
      lengths in 0.01 mm
      page gap
        housing = 40 mm ± 0.10 mm
        bearing = 25 mm ± 0.05 mm
        washer  = 2 mm ± 0.03 mm
        gear    = 10 mm ± 0.05 mm
        gap     = housing - bearing - washer - gear
      """;

  private static Filled filled(String text) {
    Workbook job = TextLoader.of(text).open();
    assertThat(job.hasFaults()).as(job.diagnostics().toString()).isFalse();
    return job.fill();
  }

  private static Rational mm(Quantity quantity) {
    return (Rational) quantity.in(MM);
  }

  private static Rational worst(Filled filled, String place) {
    return mm(requireNonNull(filled.errors(place).worst()));
  }

  private static double rootSumSquare(Filled filled, String place) {
    return requireNonNull(filled.errors(place).rootSumSquare()).in(MM).toDouble();
  }

  private static String shown(Filled filled, String place) {
    return filled.find(place).shown().text();
  }

  @Test
  void a_gap_is_off_by_the_published_figures() {
    Filled gap = filled(GAP);
    assertThat(gap.find("gap").shown().text()).isEqualTo("3.00 mm");
    assertThat(worst(gap, "gap")).isEqualTo(Rational.parse("0.23"));
    assertThat(rootSumSquare(gap, "gap")).isCloseTo(0.12610, offset(5e-6));
  }

  /**
   * Arithmetic alone: .20 + .10 + .15, and the root of .0725; ten of 0.1, and a tenth of root 10.
   */
  @Test
  void errors_add_up_at_worst_and_by_their_squares() {
    Filled three =
        filled(
            """
            workbook "w"
            page p
              a = 5 mm ± 0.20 mm
              b = 6 mm ± 0.10 mm
              c = 6 mm ± 0.15 mm
              sum = a + b + c
            """);
    assertThat(worst(three, "sum")).isEqualTo(Rational.parse("0.45"));
    assertThat(rootSumSquare(three, "sum")).isCloseTo(0.269, offset(5e-4));
    StringBuilder text = new StringBuilder("workbook \"w\"\npage p\n");
    IntStream.range(0, 10).forEach(i -> text.append("  a%d = 1 mm ± 0.1 mm\n".formatted(i)));
    Filled ten = filled(text + "  sum = a0 + a1 + a2 + a3 + a4 + a5 + a6 + a7 + a8 + a9\n");
    assertThat(worst(ten, "sum")).isEqualTo(Rational.ONE);
    assertThat(rootSumSquare(ten, "sum")).isCloseTo(0.316, offset(5e-4));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          a - a                               | 0     | one error on both sides cancels
          3 * a - a / 2                       | 0.25  | the ways of one error are added first
          -(a - b)                            | 0.15  | a sign takes nothing off
          2 * (a + b) - 2 * b                 | 0.2   | through brackets
          if b > 1 mm then a else 9 * b       | 0.1   | only the branch that is taken
          a + b rounded up to 1 mm            | 0     | what is rounded is a decision
          twice(a) + b                        | 0.25  | through a function by what it is called with
          a * scale                           | 0.25  | by a factor that is not off
          a * b / b0                          |       | not through a product of two
          max(a, b)                           |       | nor a choice of the larger
          if b < 1 mm then max(a, b) else a   | 0.1   | unless it is not taken
          """)
  void an_error_goes_linearly(String formula, String worst, String why) {
    Filled filled =
        filled(
            """
            workbook "w"
            to find twice(x) = x + x
            page p
              scale = 5/2
              a = 10 mm ± 0.1 mm
              b = 4 mm ± 0.05 mm
              b0 = 4 mm
              value = %s
            """
                .formatted(formula));
    ErrorBudget errors = filled.errors("value");
    if (worst == null) {
      assertThat(errors.worst()).as(why).isNull();
      assertThat(errors.open()).singleElement().asString().contains("does not go through");
    } else {
      assertThat(mm(requireNonNull(errors.worst()))).as(why).isEqualTo(Rational.parse(worst));
    }
  }

  private static final String PARTS =
      """
      workbook "parts"
      lengths in 0.01 mm
      page p
        saw = 0.2 mm
        table parts by name
          given
            name : text
            size : length
            base : row of parts = "one"
          worked out
            cut  = size + 1 mm rounded up to 1 mm ± saw
            pair = cut + base.cut
            fits = pair <= 20 mm even at worst
        rows of parts
          name    | size             | base  | cut
          "one"   | 8.5 mm ± 0.1 mm  |       |
          "two"   | 9 mm ± 0.1 mm    | "one" |
          "three" | 8 mm             | "two" | 9 mm
          "four"  | 8 mm             | "two" | 9.4 mm ± 0.05 mm
          "five"  | 3 mm ± 0.1 mm    | "two" | size + size ± 0.01 mm
      """;

  @ParameterizedTest
  @CsvSource({
    "one, 0.4, no",
    "two, 0.4, no",
    "three, 0.2, yes",
    "four, 0.25, yes",
    "five, 0.41, yes"
  })
  void a_row_is_off_as_it_says_itself(String row, String worst, String fits) {
    Filled parts = filled(PARTS);
    assertThat(worst(parts, "pair of " + row)).isEqualTo(Rational.parse(worst));
    assertThat(shown(parts, "fits of " + row)).isEqualTo(fits);
  }

  @Test
  void a_filled_cell_is_not_off_unless_it_says_so() {
    Filled parts = filled(PARTS);
    assertThat(worst(parts, "cut of three")).isEqualTo(Rational.ZERO);
    assertThat(worst(parts, "cut of four")).isEqualTo(Rational.parse("0.05"));
    assertThat(shown(parts, "cut of four")).isEqualTo("9.4 mm");
  }

  /** 10 + 10 with 0.2 twice, of one and the same row: at worst 0.4 over. */
  @Test
  void a_limit_is_met_at_its_very_edge() {
    Filled parts = filled(PARTS.replace("20 mm even", "20.4 mm even"));
    assertThat(shown(parts, "fits of one")).isEqualTo("yes");
    assertThat(shown(filled(PARTS.replace("20 mm even", "20.39 mm even")), "fits of one"))
        .isEqualTo("no");
  }

  @Test
  void each_relation_is_held_against_the_worst() {
    Filled gap =
        filled(
            GAP
                + """
                  a = gap >= 2.77 mm even at worst
                  b = gap > 2.77 mm even at worst
                  c = gap <= 3.23 mm even at worst
                  d = gap < 3.23 mm even at worst
                  e = 3.23 mm >= gap even at worst
                  f = gap > 2 mm even at worst and housing < bearing even at worst
                """);
    assertThat(List.of("a", "b", "c", "d", "e", "f"))
        .extracting(place -> shown(gap, place))
        .containsExactly("yes", "no", "yes", "no", "yes", "no");
  }

  @Test
  void an_edited_tolerance_moves_what_it_decides() {
    Filled gap = filled(GAP + "  fits = gap >= 2.77 mm even at worst\n");
    Filled loose = edited(gap, "housing", "40 mm ± 0.11 mm");
    assertThat(shown(loose, "fits")).isEqualTo("no");
    assertThat(worst(loose, "gap")).isEqualTo(Rational.parse("0.24"));
    Filled exact = edited(loose, "washer", "2 mm");
    assertThat(shown(exact, "fits")).isEqualTo("yes");
    Filled through = edited(exact, "gap", "housing - 2 * bearing");
    assertThat(worst(through, "gap")).isEqualTo(Rational.parse("0.21"));
    assertThat(shown(through, "fits")).isEqualTo("no");
  }

  @Test
  void a_first_tolerance_may_be_edited_in() {
    Filled plain =
        filled(GAP.replaceAll(" ± [0-9.]+ mm", "") + "  fits = gap >= 3 mm even at worst\n");
    assertThat(shown(plain, "fits")).isEqualTo("yes");
    assertThat(shown(edited(plain, "gear", "10 mm ± 0.05 mm"), "fits")).isEqualTo("no");
  }

  private static Filled edited(Filled filled, String place, String formula) {
    Edit edit = filled.withFormula(filled.spot(place).place(), formula);
    return requireNonNull(edit.filled(), () -> edit.diagnostics().toString());
  }

  @Test
  void an_edited_cell_brings_its_own_tolerance() {
    Filled parts = filled(PARTS);
    Table table = requireNonNull(parts.book().table("parts"));
    Column cut = requireNonNull(table.column("cut"));
    Edit edit = parts.withCell(cut, 0, "9.9 mm ± 0.4 mm");
    Filled after = requireNonNull(edit.filled());
    assertThat(worst(after, "pair of one")).isEqualTo(Rational.parse("0.8"));
    assertThat(worst(after, "pair of two")).isEqualTo(Rational.parse("0.6"));
    Filled back = requireNonNull(after.withCell(cut, 0, "").filled());
    assertThat(worst(back, "pair of one")).isEqualTo(Rational.parse("0.4"));
  }

  @Test
  void a_change_keeps_the_tolerance_of_what_it_reads() throws Exception {
    Workbook job =
        new TextLoader()
            .with("gap.batten", GAP)
            .with(
                "job.batten",
                """
                workbook "job"
                follows "gap.batten"
                change housing = housing + 1 mm ± 0.01 mm because "another lot"
                """)
            .open();
    Filled filled = job.fill();
    assertThat(shown(filled, "gap")).isEqualTo("4.00 mm");
    assertThat(worst(filled, "gap")).isEqualTo(Rational.parse("0.24"));
  }

  @Test
  void a_negative_tolerance_is_a_fault_of_its_own() {
    Filled gap =
        filled(
            GAP.replace("± 0.03 mm", "± (0.01 mm - 0.02 mm)")
                + "  fits = gap > 0 mm even at worst\n");
    assertThat(gap.faults())
        .singleElement()
        .extracting(FilledValue::name)
        .isEqualTo("tolerance of washer");
    assertThat(shown(gap, "gap")).isEqualTo("3.00 mm");
    assertThat(shown(gap, "fits")).isEqualTo("error in tolerance of washer");
    assertThat(gap.errors("gap").open()).singleElement().asString().contains("at least 0");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          x = 8 in ± 2 lb                                   | kind-mismatch         | of another dimension
          x = "ash" ± 2 in                                  | tolerance-of-no-number | a text is not off
          x = 2026-03-14 < 2026-03-15 even at worst         | tolerance-of-no-number | nor is a date
          x = max(housing, gear) < 50 mm even at worst      | no-way-for-tolerance  | through no function
          x = housing * gear < 500 mm^2 even at worst       | no-way-for-tolerance  | nor a product of two
          x = 3 mm / gear < 1 even at worst                 | no-way-for-tolerance  | nor a divisor
          x = gear^2 < 1 mm^2 even at worst                 | no-way-for-tolerance  | nor a power
          x = if 1 = 2 then max(gear, gap) < gap even at worst else true | no-way-for-tolerance | though not taken
          """)
  void what_cannot_be_off_is_told(String line, String code, String why) {
    Workbook job = TextLoader.of(GAP + "  " + line + "\n").open();
    assertThat(job.diagnostics())
        .as(why)
        .filteredOn(Diagnostic::isFault)
        .extracting(Diagnostic::code)
        .containsExactly(code);
  }

  @Test
  void a_function_compares_nothing_at_worst() {
    Workbook job = TextLoader.of(GAP + "to find fit(a) = a < 1 mm even at worst\n").open();
    assertThat(job.diagnostics())
        .extracting(Diagnostic::code)
        .containsExactly("at-worst-in-function");
  }

  @Test
  void rows_are_counted_by_what_holds_at_worst() {
    Filled parts =
        filled(
            PARTS
                + """
                page totals
                  good = count of parts where pair <= 20 mm even at worst
                  all  = count of parts
                """);
    assertThat(shown(parts, "good")).isEqualTo("3");
  }
}
