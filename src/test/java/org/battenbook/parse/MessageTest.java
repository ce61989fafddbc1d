package org.battenbook.parse;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import org.battenbook.Golden;
import org.battenbook.SpecTable;
import org.battenbook.source.DiagnosticPrinter;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The whole message for everything that the tables in {@code spec} refuse, with its caret and its
 * repair, as people read it: in {@code golden/messages}, one file for a table.
 */
class MessageTest {

  @ParameterizedTest
  @ValueSource(strings = {"names", "numbers", "units", "operators", "aggregates", "texts"})
  void a_formula_that_is_refused_is_told_why(String table) {
    check("formulas-" + table, FormulaParser::parse);
  }

  @ParameterizedTest
  @ValueSource(strings = "statements")
  void lines_that_are_refused_are_told_why(String table) {
    check(table, WorkbookParser::parse);
  }

  private static void check(String table, BiConsumer<SourceText, Diagnostics> parser) {
    List<String> told =
        SpecTable.read(table).cases().stream()
            .map(cells -> told(cells.get(0), parser))
            .filter(message -> !message.isEmpty())
            .toList();
    assertThat(told).isNotEmpty();
    Golden.assertSame("messages/" + table + ".txt", String.join("\n", told));
  }

  private static String told(String input, BiConsumer<SourceText, Diagnostics> parser) {
    Diagnostics diagnostics = new Diagnostics();
    parser.accept(SourceText.of("table", input.replaceAll(" ⏎ ?", "\n")), diagnostics);
    return diagnostics.inOrder().stream()
        .map(new DiagnosticPrinter()::print)
        .collect(Collectors.joining());
  }
}
