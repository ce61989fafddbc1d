package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.battenbook.SpecTable;
import org.battenbook.value.Value;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** What formulas mean, by the table {@code spec/evaluation.tsv}. */
class EvaluationSpecTest {

  @TestFactory
  Stream<DynamicTest> formula_gives_its_value() {
    return SpecTable.read("evaluation")
        .each(cells -> assertThat(value(cells.get(0))).isEqualTo(cells.get(1)));
  }

  /** The exact value in the base unit, or the code of the value's fault. */
  private static String value(String formula) {
    Workbook job = TextLoader.of("workbook \"t\"\npage p\n  x = " + formula + "\n").open();
    assertThat(job.diagnostics()).isEmpty();
    FilledValue x = job.fill().find("x");
    return x.value() instanceof Value.Fault fault
        ? fault.code()
        : (x.exact() + " " + x.unit()).strip();
  }
}
