package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.battenbook.SpecTable;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * What formulas mean, by the table {@code spec/evaluation.tsv}: as a line, and as a column, where
 * lanes work it out and a cell overrides it.
 */
class EvaluationSpecTest {
  private static final int ROWS = 5;
  private static final int OVERRIDDEN = 2;

  @TestFactory
  Stream<DynamicTest> formula_gives_its_value_as_a_line() {
    return SpecTable.read("evaluation")
        .each(cells -> assertThat(told(line(cells.get(0)).find("x"))).isEqualTo(cells.get(1)));
  }

  @TestFactory
  Stream<DynamicTest> formula_gives_its_value_as_a_column() {
    return SpecTable.read("evaluation").each(cells -> column(cells.get(0), cells.get(1)));
  }

  private static Filled line(String formula) {
    return fill("  " + definition(formula) + "\n");
  }

  /** A formula of the table may begin with its kind, {@code : count = 3 / 2}. */
  private static String definition(String formula) {
    return formula.startsWith(":") ? "x " + formula : "x = " + formula;
  }

  private static void column(String formula, String expected) {
    String override = override(line(formula));
    Filled filled = fill(table(formula, override));
    List<String> values =
        IntStream.range(0, ROWS).mapToObj(row -> told(filled.find("x of r" + row))).toList();
    assertThat(values)
        .isEqualTo(
            IntStream.range(0, ROWS)
                .mapToObj(row -> row == OVERRIDDEN ? override : expected)
                .toList());
  }

  /** A value of the same kind that no formula of the table gives. */
  private static String override(Filled line) {
    Kind kind = line.results().program().book().place(line.spot("x").place()).kind();
    if (line.spot("x").place().declaredKind() != null) {
      return "77";
    }
    if (kind instanceof Kind.Measured measured) {
      return ("-77 " + measured.dimension().baseSymbol()).strip();
    }
    return kind.equals(Kind.DATE) ? "1999-12-31" : opposite(line.find("x").exact());
  }

  private static String opposite(String truth) {
    return truth.equals("yes") ? "no" : "yes";
  }

  private static String table(String formula, String override) {
    StringBuilder table =
        new StringBuilder(
            """
              table t by k
                given
                  k : text
                worked out
                  %s
              rows of t
                k | x
            """
                .formatted(definition(formula)));
    for (int row = 0; row < ROWS; row++) {
      table.append("    \"r%d\" | %s\n".formatted(row, row == OVERRIDDEN ? override : ""));
    }
    return table.toString();
  }

  private static Filled fill(String lines) {
    Workbook job = TextLoader.of("workbook \"t\"\npage p\n" + lines).open();
    assertThat(job.diagnostics()).isEmpty();
    return job.fill();
  }

  /** The exact value in the base unit, or the code of the value's fault. */
  private static String told(FilledValue value) {
    return value.value() instanceof Value.Fault fault
        ? fault.code()
        : (value.exact() + " " + value.unit()).strip();
  }
}
