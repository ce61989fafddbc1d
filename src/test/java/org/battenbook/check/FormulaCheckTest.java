package org.battenbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.battenbook.source.Diagnostic;
import org.battenbook.workbook.TextLoader;
import org.battenbook.workbook.Workbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The kinds of formulas: what is refused, by its code, and what is not refused twice. */
class FormulaCheckTest {
  private static final String JOB =
      """
      workbook "t"
      currency USD
      to find both(x : length, y : length) = x + y
      to find plain(x) = x + x
      page lip
        face = 1 in
      page p
        lip  = 3 in
        name = "ash"
        sold = 2026-03-14
        table t by k
          given
            k    : text
            w    : length
            day  : date
            next : row of t
          worked out
            tall = w > 2 in
            v    = %s
        rows of t
          k   | w    | day        | next
          "a" | 1 in | 2026-03-14 | "b"
          "b" | 3 in | 2026-03-15 | "a"
      page q
        x = %s
      """;

  private static Workbook line(String formula) {
    return TextLoader.of(JOB.formatted("w", formula)).open();
  }

  private static Workbook column(String formula) {
    return TextLoader.of(JOB.formatted(formula, "1")).open();
  }

  private static List<String> codes(Workbook job) {
    return job.diagnostics().stream().map(Diagnostic::code).toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "3 lip | write units after numbers; to multiply, write '3 * lip'",
        "12 in/lip | to divide by 'lip', write '12 in / lip'",
      })
  void a_name_in_place_of_a_unit_gets_the_operator_that_is_missing(String formula, String repair) {
    Workbook job = line(formula);
    assertThat(codes(job)).containsExactly("unknown-unit");
    assertThat(job.diagnostics().get(0).repair()).contains(repair);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "12 in/zz | unknown-unit",
        "nosuch(1 in, zz) | unknown-function unknown-name",
        "lip(2) | unknown-function",
        "sqrt() | argument-count",
        "sqrt(4, 2) | argument-count",
        "max() | argument-count",
        "both(1 in) | argument-count",
        "both(zz) | argument-count unknown-name",
        "both(1 in, 2 lb) | argument-kind",
        "both(1 in, zz) | unknown-name",
        "plain(\"a\") | not-a-number",
        "if lip then 1 else 2 | not-yes-or-no",
        "if zz then 1 else 2 | unknown-name",
        "if true then 1 in else 2 lb | branch-mismatch",
        "if true then zz else 2 lb | unknown-name",
        "sold < 2026-03-15 even at worst | tolerance-of-no-number",
        "zz < 1 in even at worst | unknown-name",
        "count of nope | no-such-table",
        "sum of w over nope | no-such-table",
        "sum of day over t | not-a-quantity",
        "average of day over t | not-a-quantity",
        "largest of k over t | not-a-quantity",
        "smallest of tall over t | not-a-quantity",
        "sum of zz over t | unknown-name",
        "count of t where w | not-yes-or-no",
        "above.w | no-row-here",
        "this.w | no-outer-row",
        "count of t where w = this.w | no-outer-row",
        "count of t where w > (sum of w over t where w = this.zz) | no-such-column",
        "lip.face.zz | no-row-to-open",
        "name.face | no-row-to-open",
        "\"{lip shown as lb}\" | form-mismatch",
        "\"{lip shown as zz}\" | unknown-unit",
        "\"{zz shown as mm}\" | unknown-name",
        "1 in shown as 0 in | step-not-positive",
        "first row | no-row-here",
      })
  void a_line_is_refused_once(String formula, String expected) {
    assertThat(String.join(" ", codes(line(formula)))).isEqualTo(expected.strip());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "above.zz | no-such-column",
        "count of t where above.w > 1 in | no-row-here",
        "next.zz | no-such-column",
        "next.w.k | no-row-to-open",
        "sum of this.zz over t | no-such-column",
        "this.w | no-outer-row",
        "next.next.next.zz | no-such-column",
      })
  void a_column_is_refused_once(String formula, String expected) {
    assertThat(String.join(" ", codes(column(formula)))).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "lip.face | 1 in",
        "2 * minor unit | 0.02 USD",
        "largest of day over t | 2026-03-15",
        "count of t where tall | 1",
        "\"{lip shown as mm}\" | 76.2 mm",
        "\"{lip shown as 1/2 ft}\" | ≈ 1/2 ft",
        "plain(2) | 4",
        "both(1 in, 2 in) | 3 in",
        "count of t where w > (sum of w over t where w < this.w) | 2",
        "sum of (count of t where w >= this.w) over t | 3",
      })
  void what_is_allowed_has_a_value(String formula, String shown) {
    assertThat(line(formula).fill().find("x").shown().text()).isEqualTo(shown);
  }

  /** A function with an error of its own reports it, even if nothing calls it. */
  @Test
  void a_function_is_checked_without_a_call() {
    String job = JOB.replace("page lip", "to find broken(x : length) = x + 1 lb\npage lip");
    assertThat(codes(TextLoader.of(job.formatted("w", "1")).open()))
        .containsExactly("dimension-mismatch");
  }
}
