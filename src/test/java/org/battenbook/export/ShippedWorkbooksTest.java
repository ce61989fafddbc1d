package org.battenbook.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.battenbook.book.Loader;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.Workbook;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The spreadsheet files of every shipped workbook, and of the jobs that check the standards. */
class ShippedWorkbooksTest {

  @TestFactory
  Stream<DynamicTest> every_formula_cell_comes_to_the_workbooks_value() throws IOException {
    return each(Recalculation::agrees);
  }

  @Test
  void the_museums_file_has_formulas_by_the_thousand() throws Exception {
    Filled museum = fill("workbooks/saltmarsh-ferry-museum.batten");
    assertThat(Recalculation.agrees(museum)).isGreaterThan(1000);
  }

  @TestFactory
  Stream<DynamicTest> every_value_that_is_worked_out_is_a_live_formula() throws IOException {
    return each(filled -> assertThat(Recalculation.fixed(filled)).isEmpty());
  }

  private interface Check {
    void of(Filled filled) throws IOException;
  }

  private static Stream<DynamicTest> each(Check check) throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("workbooks"))) {
      List<String> found =
          files.map(Path::toString).filter(f -> f.endsWith(".batten")).sorted().toList();
      assertThat(found).isNotEmpty();
      return found.stream().map(path -> DynamicTest.dynamicTest(path, () -> check.of(fill(path))));
    }
  }

  private static Filled fill(String path) throws Loader.Unreadable {
    Workbook workbook = Workbook.open(path);
    assertThat(workbook.hasFaults()).as(workbook.diagnostics().toString()).isFalse();
    return workbook.fill();
  }
}
