package org.battenbook.parse;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.battenbook.source.Diagnostic;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.battenbook.syntax.RowsSection;
import org.battenbook.syntax.WorkbookFile;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** A workbook may come from anyone: past a bound there is a message, never a crash or a hang. */
class LimitsTest {
  private static final Duration SOON = Duration.ofSeconds(20);

  /** The codes of what is said of a formula, or nothing where it is read. */
  private static String said(String formula) {
    Diagnostics diagnostics = new Diagnostics();
    SourceText source = SourceText.of("limits", formula);
    Assertions.assertTimeoutPreemptively(
        SOON,
        () ->
            assertThat(FormulaParser.parse(source, diagnostics) == null)
                .isEqualTo(diagnostics.hasFaults()));
    return diagnostics.inOrder().stream().map(Diagnostic::code).collect(Collectors.joining(" "));
  }

  @TestFactory
  Stream<DynamicTest> two_hundred_deep_is_read_and_deeper_refused() {
    return Stream.of(
            new String[] {"brackets", "(", "a", ")"},
            new String[] {"functions", "f(", "a", ")"},
            new String[] {"signs", "- ", "a", ""},
            new String[] {"negations", "not ", "a", ""},
            new String[] {"choices", "if a then b else ", "c", ""},
            new String[] {"totals", "sum of ", "a", " over t"})
        .map(
            nest ->
                DynamicTest.dynamicTest(
                    nest[0],
                    () -> {
                      assertThat(said(nested(nest, 200))).isEmpty();
                      assertThat(said(nested(nest, 201))).isEqualTo("nested-too-deep");
                      assertThat(said(nested(nest, 5_000))).isEqualTo("nested-too-deep");
                    }));
  }

  private static String nested(String[] nest, int depth) {
    return nest[1].repeat(depth) + nest[2] + nest[3].repeat(depth);
  }

  @Test
  void conditions_inside_conditions_are_counted_too() {
    assertThat(said("count of t where a = ".repeat(300) + "b")).isEqualTo("nested-too-deep");
    assertThat(said("row of t with smallest ".repeat(300) + "b")).isEqualTo("nested-too-deep");
  }

  @Test
  void many_brackets_side_by_side_do_not_nest() {
    assertThat(said("(if a then b else c)" + " + (if a then b else c)".repeat(400))).isEmpty();
  }

  @Test
  void a_sum_of_many_terms_is_read_up_to_the_depth_that_is_safe_to_walk() {
    assertThat(said("a" + " + a".repeat(900))).isEmpty();
    assertThat(said("a" + " + a".repeat(4_000))).isEqualTo("formula-too-long");
  }

  @Test
  void a_name_of_many_words_is_a_name_up_to_the_bound() {
    assertThat(said("ab ".repeat(66))).isEmpty();
    assertThat(said("a b ".repeat(4_000))).isEqualTo("name-too-long");
  }

  @Test
  void a_number_of_many_digits_is_refused() {
    assertThat(said("9".repeat(101))).isEqualTo("number-too-long");
    assertThat(said("1/" + "9".repeat(200))).isEqualTo("number-too-long");
  }

  @Test
  void a_line_of_fifty_megabytes_is_refused() {
    String line = "x = 1" + " + 1".repeat(50_000_000 / 4);
    Diagnostics diagnostics = new Diagnostics();
    Assertions.assertTimeoutPreemptively(
        SOON, () -> WorkbookParser.parse(SourceText.of("limits", "page p\n" + line), diagnostics));
    assertThat(Said.by(diagnostics)).startsWith("line-too-long at x = 1");
  }

  @Test
  void a_statement_over_endless_lines_is_refused() {
    String text = "page p\nx = 1\n" + "+ 1\n".repeat(100_000) + "y = 2\n";
    Diagnostics diagnostics = new Diagnostics();
    WorkbookFile file = WorkbookParser.parse(SourceText.of("limits", text), diagnostics);
    assertThat(diagnostics.inOrder()).hasSize(1);
    assertThat(file.pages().get(0).items()).hasSize(1);
  }

  @Test
  void ten_megabytes_of_rows_are_read() {
    String row = "  \"Tide chart, north\" | 297 mm | 420 mm | 2 | \"ash cap\" | 2 3/4 in\n";
    int count = 10_000_000 / row.length();
    String head =
        "page pieces\n rows of pieces\n  title | width | height | quantity | moulding | border\n";
    Diagnostics diagnostics = new Diagnostics();
    WorkbookFile file =
        WorkbookParser.parse(SourceText.of("limits", head + row.repeat(count)), diagnostics);
    assertThat(diagnostics.inOrder()).isEmpty();
    RowsSection rows = (RowsSection) file.pages().get(0).items().get(0);
    assertThat(rows.rows().rowCount()).isEqualTo(count);
    assertThat(rows.rows().span(count - 1, 5).text()).isEqualTo("2 3/4 in");
  }

  @Test
  void faults_on_every_line_are_all_reported_and_none_eats_the_next() {
    String text = "page p\n" + "x = (\ny = 3\n".repeat(500);
    Diagnostics diagnostics = new Diagnostics();
    WorkbookFile file = WorkbookParser.parse(SourceText.of("limits", text), diagnostics);
    assertThat(diagnostics.inOrder()).hasSize(500);
    assertThat(file.pages().get(0).items())
        .hasSize(1_000)
        .filteredOn(item -> item.span().text().equals("y = 3"))
        .hasSize(500);
  }
}
