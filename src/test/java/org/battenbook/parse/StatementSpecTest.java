package org.battenbook.parse;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.battenbook.SpecTable;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.battenbook.syntax.OutlineText;
import org.battenbook.syntax.WorkbookFile;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * How lines are read, by the table {@code spec/statements.tsv}; a line's end is written ⏎ there.
 */
class StatementSpecTest {

  @TestFactory
  Stream<DynamicTest> lines_are_read_or_refused() {
    return SpecTable.read("statements")
        .each(cells -> check(cells.get(0), cells.get(1), cells.get(2)));
  }

  private static void check(String lines, String outline, String said) {
    String text = lines.replaceAll(" ⏎ ?", "\n");
    Diagnostics diagnostics = new Diagnostics();
    WorkbookFile file = WorkbookParser.parse(SourceText.of("table", text), diagnostics);
    assertThat(Said.by(diagnostics)).isEqualTo(said);
    assertThat(OutlineText.of(file)).isEqualTo(outline);
  }
}
