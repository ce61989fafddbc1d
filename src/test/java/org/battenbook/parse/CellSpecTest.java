package org.battenbook.parse;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.battenbook.SpecTable;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.RowCells;
import org.battenbook.syntax.TreeText;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** How cells are read, by the table {@code spec/cells.tsv}. */
class CellSpecTest {

  @TestFactory
  Stream<DynamicTest> cell_is_read_or_refused() {
    return SpecTable.read("cells").each(cells -> check(cells.get(0), cells.get(1), cells.get(2)));
  }

  private static void check(String cell, String tree, String said) {
    Diagnostics diagnostics = new Diagnostics();
    Formula formula = read(cell, diagnostics);
    assertThat(Said.by(diagnostics)).isEqualTo(said);
    assertThat(formula == null ? "" : TreeText.of(formula)).isEqualTo(tree);
  }

  private static @Nullable Formula read(String cell, Diagnostics diagnostics) {
    RowCells cells =
        new RowCells.Builder(SourceText.of("table", cell), 1).cell(0, cell.length()).build();
    return CellReader.read(cells, 0, 0, diagnostics);
  }

  @Test
  void an_empty_cell_gives_nothing_and_no_message() {
    Diagnostics diagnostics = new Diagnostics();
    assertThat(read("", diagnostics)).isNull();
    assertThat(diagnostics.inOrder()).isEmpty();
  }

  /** The short way of literals reads what the formula's way reads, wherever it reads at all. */
  @TestFactory
  Stream<DynamicTest> number_in_a_cell_reads_as_in_a_formula() {
    return SpecTable.read("formulas-numbers").each(cells -> compare(cells.get(0)));
  }

  private static void compare(String text) {
    Formula inFormula = FormulaParser.parse(SourceText.of("table", text), new Diagnostics());
    SourceText source = SourceText.of("table", text);
    var literal = new LiteralCell(source).read(0, text.length());
    if (literal != null) {
      assertThat(inFormula).isNotNull();
      assertThat(TreeText.of(literal)).isEqualTo(TreeText.of(inFormula));
    }
  }
}
