package org.battenbook.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class DiagnosticPrinterTest {
  private final DiagnosticPrinter printer = new DiagnosticPrinter();

  @Test
  void carets_stand_under_the_very_words() {
    SourceText source = SourceText.of("ferry.batten", "page p\n  short = top rail lip\n");
    Diagnostic fault =
        Diagnostic.fault("unknown-name", words(source, "top rail lip"), "no such line", "write it");
    assertThat(printer.print(fault))
        .isEqualTo(
            """
            ferry.batten:2:11: no such line
              2 |   short = top rail lip
                |           ^^^^^^^^^^^^
              write it
            """);
  }

  @Test
  void both_operands_on_a_line_are_underlined() {
    SourceText source = SourceText.of("a.batten", "x = 3 in + 2 lb");
    Diagnostic fault =
        new Diagnostic(
            Diagnostic.Severity.FAULT,
            "dimension-mismatch",
            words(source, "2 lb"),
            List.of(words(source, "3 in")),
            "a length and a mass",
            "");
    assertThat(printer.print(fault))
        .isEqualTo(
            """
            a.batten:1:12: a length and a mass
              1 | x = 3 in + 2 lb
                |     ^^^^   ^^^^
            """);
  }

  @Test
  void words_on_two_lines_show_both_lines() {
    SourceText source = SourceText.of("a.batten", "x = 3 in\n  + 2 lb");
    Diagnostic caution =
        new Diagnostic(
            Diagnostic.Severity.CAUTION,
            "odd-words",
            words(source, "2 lb"),
            List.of(words(source, "3 in")),
            "odd",
            "");
    assertThat(printer.print(caution))
        .isEqualTo(
            """
            a.batten:2:5: caution: odd
              1 | x = 3 in
                |     ^^^^
              2 |   + 2 lb
                |     ^^^^
            """);
  }

  @Test
  void an_empty_span_at_the_end_has_a_caret_of_its_own() {
    SourceText source = SourceText.of("a.batten", "x = 3 +");
    Diagnostic fault = Diagnostic.fault("it-ends", source.span(7, 7), "the formula ends here", "");
    assertThat(printer.print(fault)).endsWith("    |        ^\n");
  }

  @Test
  void a_long_line_is_shown_in_part() {
    SourceText source =
        SourceText.of("a.batten", "y".repeat(10_000) + " lip " + "z".repeat(10_000));
    String printed =
        printer.print(Diagnostic.fault("no-line", words(source, "lip"), "no such line", ""));
    assertThat(printed.lines()).allMatch(line -> line.length() < 130);
    List<String> lines = printed.lines().toList();
    assertThat(lines.get(1)).startsWith("  1 | …y").endsWith("z…");
    assertThat(lines.get(2).indexOf('^')).isEqualTo(lines.get(1).indexOf("lip"));
  }

  @Test
  void what_a_terminal_would_obey_is_only_shown() {
    SourceText source = SourceText.of("a.batten", "\t\u001b[31mred = lip");
    String printed =
        printer.print(Diagnostic.fault("no-line", words(source, "lip"), "no '\u001b[31mred'", ""));
    assertThat(printed).doesNotContain("\u001b", "\t").contains("␛[31mred");
    List<String> lines = printed.lines().toList();
    assertThat(lines.get(2).indexOf('^')).isEqualTo(lines.get(1).indexOf("lip"));
  }

  @Test
  void wide_characters_take_two_columns() {
    SourceText source = SourceText.of("a.batten", "額縁 = lip");
    String printed = printer.print(Diagnostic.fault("no-line", words(source, "lip"), "no", ""));
    assertThat(printed.lines().toList().get(2)).isEqualTo("    |        ^^^");
  }

  private static Span words(SourceText source, String words) {
    int start = source.text().indexOf(words);
    return source.span(start, start + words.length());
  }
}
