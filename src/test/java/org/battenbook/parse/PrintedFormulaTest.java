package org.battenbook.parse;

import static org.assertj.core.api.Assertions.assertThat;

import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.FormulaPrinter;
import org.battenbook.syntax.RandomFormulas;
import org.battenbook.syntax.TreeText;
import org.junit.jupiter.api.Test;

/** Reading what the printer wrote gives the same tree, and writes the same text. */
class PrintedFormulaTest {
  private static final int TRIES = 6_000;

  @Test
  void a_printed_formula_reads_as_the_same_tree() {
    for (long seed = 0; seed < TRIES; seed++) {
      Formula formula = new RandomFormulas(seed).formula((int) (seed % 5));
      String text = FormulaPrinter.print(formula);
      Diagnostics diagnostics = new Diagnostics();
      Formula again = FormulaParser.parse(SourceText.of("seed " + seed, text), diagnostics);
      assertThat(diagnostics.inOrder()).as("seed %s: %s", seed, text).isEmpty();
      assertThat(again).as("seed %s: %s", seed, text).isNotNull();
      assertThat(TreeText.of(again)).as("seed %s: %s", seed, text).isEqualTo(TreeText.of(formula));
      assertThat(FormulaPrinter.print(again)).as("seed %s", seed).isEqualTo(text);
    }
  }
}
