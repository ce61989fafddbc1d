package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.battenbook.workbook.Repeated.name;
import static org.battenbook.workbook.Repeated.repeated;

import java.time.Duration;
import java.util.List;
import java.util.function.IntFunction;
import org.battenbook.keep.Keeping;
import org.battenbook.keep.NotKept;
import org.battenbook.keep.SlatShop;
import org.battenbook.source.Diagnostic;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Files within the bounds that ask for a lot of work: each is answered soon, with values or with
 * the message that belongs to it. Files beyond a bound are those of {@code BoundedFilesTest}.
 */
class CostlyFilesTest {
  private static final Duration SOON = Duration.ofSeconds(20);

  private static Workbook read(String text) {
    return Assertions.assertTimeoutPreemptively(SOON, () -> TextLoader.of(text).open());
  }

  private static Filled filled(String text) {
    Workbook workbook = read(text);
    assertThat(workbook.diagnostics()).isEmpty();
    return Assertions.assertTimeoutPreemptively(SOON, workbook::fill);
  }

  private static String table(String workedOut, int rows, IntFunction<String> row) {
    return """
        page p
          table t by name
            given
              name : text
              n : number
            worked out
              %s
          rows of t
            name | n
        """
            .formatted(workedOut)
        + repeated(rows, i -> "    \"r%d\" | %s%n".formatted(i + 1, row.apply(i + 1)));
  }

  /** Functions of which each calls the one before twice. */
  private static String doubling(int functions) {
    return "to find %s(x) = x + 1%n".formatted(name(0))
        + repeated(
            functions - 1,
            i -> "to find %1$s(x) = %2$s(x) + %2$s(x)%n".formatted(name(i + 1), name(i)))
        + "page p%n  y = %s(1)%n".formatted(name(functions - 1));
  }

  @ParameterizedTest
  @ValueSource(ints = {25, 40})
  void functions_that_call_others_twice_are_too_large_together(int functions) {
    Diagnostic first = read(doubling(functions)).diagnostics().get(0);
    assertThat(first.code()).isEqualTo("functions-too-large");
    assertThat(first.span().text()).isEqualTo(name(10) + "(x)");
  }

  @Test
  void a_few_functions_that_call_others_twice_are_worked_out() {
    assertThat(filled(doubling(11)).find("y").shown().text()).isEqualTo("2048");
  }

  @Test
  void growth_over_ten_thousand_rows_has_values_till_they_are_too_long() {
    Filled filled =
        filled(
            table(
                "g = if first row then 10001/10000 else above.g * 10001/10000", 10_000, i -> "1"));
    assertThat(filled.find("g of r2").shown().text()).isEqualTo("≈ 1");
    assertThat(filled.find("g of r1504").value().isKnown()).isTrue();
    assertThat(filled.find("g of r1506").shown().text())
        .isEqualTo("error: the number grew past 20,000 binary digits");
  }

  @Test
  void a_column_of_unlike_denominators_is_worked_out() {
    Filled filled = filled(table("h = 1/n", 20_000, String::valueOf));
    assertThat(filled.find("h of r20000").exact()).isEqualTo("1/20000");
  }

  @Test
  void a_column_of_long_denominators_is_read() {
    String long60 = "1/1" + "0".repeat(57);
    Filled filled = filled(table("h = n * 2", 150, i -> long60 + (1001 + 2 * i)));
    assertThat(filled.find("h of r1").exact()).isEqualTo("2/1" + "0".repeat(57) + "1003");
  }

  @Test
  void a_total_that_grows_too_long_says_so_in_every_row() {
    Filled filled = filled(table("h = sum of 1/n over t", 20_000, String::valueOf));
    assertThat(filled.find("h of r1").shown().text())
        .isEqualTo("error: the number grew past 20,000 binary digits");
  }

  @Test
  void thousands_of_unknown_names_among_thousands_are_told() {
    String lines = repeated(4_000, i -> "  %s = %sz%n".formatted(name(i), name(i)));
    List<Diagnostic> told = read("page p\n" + lines).diagnostics();
    assertThat(told).hasSize(4_000).allMatch(d -> d.code().equals("unknown-name"));
    assertThat(told.get(0).repair()).startsWith("did you mean");
  }

  @Test
  void rows_that_come_from_one_table_in_very_many_ways_are_opened() {
    String first =
        """
        page p
          table t0 by name
            given
              name : text
          rows of t0
            name
        """;
    String others =
        repeated(
            30,
            i ->
                """
                  table t%2$d by name
                    for each x of t%1$d
                    for each y of t%1$d
                """
                    .formatted(i, i + 1));
    assertThat(filled(first + others).book().tables()).hasSize(31);
  }

  @Test
  void the_way_of_a_value_through_twenty_thousand_lines_is_found() {
    String lines = repeated(19_997, i -> "  %s = %s + 1%n".formatted(name(i + 1), name(i)));
    Filled filled = filled("page p\n  %s = 1\n".formatted(name(0)) + lines);
    assertThat(filled.why(name(19_997)).shown().text()).isEqualTo("19998");
  }

  @Test
  void a_hundred_thousand_parts_of_a_plan_are_kept() throws NotKept {
    String rows =
        """
          rows of slats
            slat | long  | asked
            "a"  | 15 in | 100000
          rows of shop
            sort   | length
            "long" | 45 in
        """;
    Filled filled = filled("workbook \"Bench\"\n" + SlatShop.TABLES + rows);
    Keeping keeping =
        Assertions.assertTimeoutPreemptively(SOON, () -> Keeping.of(filled, filled.plans()));
    assertThat(keeping.texts().values()).singleElement().asString().contains("| 33334 ");
  }
}
