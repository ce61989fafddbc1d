package org.battenbook.parse;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.battenbook.SpecTable;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.TreeText;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** How formulas are read, and which are refused, by the tables {@code spec/formulas-*.tsv}. */
class FormulaSpecTest {

  @TestFactory
  Stream<DynamicTest> formula_is_read_or_refused() {
    return Stream.of("names", "numbers", "units", "operators", "aggregates", "texts")
        .flatMap(FormulaSpecTest::table);
  }

  private static Stream<DynamicTest> table(String name) {
    return SpecTable.read("formulas-" + name)
        .each(cells -> assertThat(read(cells.get(0))).isEqualTo(cells.get(1)));
  }

  /** The tree, or the messages; never both, and every message has its repair. */
  private static String read(String text) {
    Diagnostics diagnostics = new Diagnostics();
    Formula formula = FormulaParser.parse(SourceText.of("table", text), diagnostics);
    assertThat(formula == null).isEqualTo(diagnostics.hasFaults());
    assertThat(diagnostics.inOrder()).allSatisfy(d -> assertThat(d.repair()).isNotBlank());
    return formula == null ? Said.by(diagnostics) : TreeText.of(formula);
  }
}
