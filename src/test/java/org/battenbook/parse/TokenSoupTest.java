package org.battenbook.parse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.Random;
import org.battenbook.source.Diagnostic;
import org.battenbook.source.DiagnosticPrinter;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.battenbook.syntax.RowCells;
import org.junit.jupiter.api.Test;

/** Whatever is thrown at the parser, it answers with messages, and each can be printed. */
class TokenSoupTest {
  private static final int TRIES = 10_000;

  private static String soup(long seed) {
    Random random = new Random(seed);
    StringBuilder soup = new StringBuilder();
    for (int i = random.nextInt(40); i >= 0; i--) {
      soup.append(SoupPieces.any(random));
      soup.append(random.nextBoolean() ? " " : "");
    }
    return soup.toString();
  }

  @Test
  void soup_as_a_workbook_gives_messages_and_never_throws() {
    for (long seed = 0; seed < TRIES; seed++) {
      String soup = soup(seed);
      Diagnostics diagnostics = new Diagnostics();
      assertThatCode(() -> WorkbookParser.parse(SourceText.of("soup", soup), diagnostics))
          .as("seed %s: %s", seed, soup)
          .doesNotThrowAnyException();
      assertAllPrint(seed, diagnostics);
    }
  }

  @Test
  void soup_as_a_formula_gives_a_formula_or_messages() {
    for (long seed = 0; seed < TRIES; seed++) {
      String soup = soup(seed).replaceAll("[\r\n]", " ");
      Diagnostics diagnostics = new Diagnostics();
      Object formula = FormulaParser.parse(SourceText.of("soup", soup), diagnostics);
      assertThat(formula == null).as("seed %s: %s", seed, soup).isEqualTo(diagnostics.hasFaults());
      assertAllPrint(seed, diagnostics);
    }
  }

  @Test
  void soup_as_a_cell_gives_what_stands_there_or_messages() {
    for (long seed = 0; seed < TRIES; seed++) {
      String soup = soup(seed).replaceAll("[\r\n|]", " ").strip();
      String cell = soup.substring(0, Math.min(soup.length(), 12)).strip();
      RowCells rows =
          new RowCells.Builder(SourceText.of("soup", cell), 1).cell(0, cell.length()).build();
      Diagnostics diagnostics = new Diagnostics();
      Object read = CellReader.read(rows, 0, 0, diagnostics);
      assertThat(read == null)
          .as("seed %s: %s", seed, cell)
          .isEqualTo(cell.isEmpty() || diagnostics.hasFaults());
      assertAllPrint(seed, diagnostics);
    }
  }

  private static void assertAllPrint(long seed, Diagnostics diagnostics) {
    for (Diagnostic diagnostic : diagnostics.inOrder()) {
      assertThat(diagnostic.message()).as("seed %s", seed).isNotBlank();
      assertThat(diagnostic.repair()).as("seed %s: %s", seed, diagnostic).isNotBlank();
      assertThat(new DiagnosticPrinter().print(diagnostic)).as("seed %s", seed).isNotBlank();
    }
  }
}
