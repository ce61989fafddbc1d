package org.battenbook.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.ShippedFiles;
import org.battenbook.workbook.Workbook;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * The spreadsheet files of every shipped workbook, and of jobs that fill the tables of the
 * standards that no shipped job fills.
 */
class ShippedWorkbooksTest {
  private static final Path FURTHER = Path.of("src/test/resources/acceptance");
  private static final List<String> FURTHER_JOBS =
      List.of(
          "splayed-corners",
          "splayed",
          "polygon-miters",
          "multi-sided-packages",
          "withdrawal",
          "windows",
          "assembly",
          "milling");

  /** A workbook that works nothing out. */
  private static final String CAUTIONS_ALONE = "safety.batten";

  @TestFactory
  Stream<DynamicTest> every_formula_cell_comes_to_the_workbooks_value() throws IOException {
    return each(
        filled ->
            assertThat(Recalculation.agrees(filled) > 0)
                .isEqualTo(!filled.file().endsWith(CAUTIONS_ALONE)));
  }

  @Test
  void the_museums_file_has_formulas_by_the_thousand() throws Exception {
    Filled museum = fill(Path.of("workbooks/saltmarsh-ferry-museum.batten"));
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
    List<Path> found = new ArrayList<>(workbooks(Path.of("workbooks")));
    FURTHER_JOBS.forEach(job -> found.add(FURTHER.resolve(job + ".batten")));
    return found.stream()
        .map(path -> DynamicTest.dynamicTest(path.toString(), () -> check.of(fill(path))));
  }

  private static List<Path> workbooks(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      List<Path> found = files.filter(f -> f.toString().endsWith(".batten")).sorted().toList();
      assertThat(found).isNotEmpty();
      return found;
    }
  }

  private static Filled fill(Path path) {
    Workbook workbook = ShippedFiles.open(path);
    assertThat(workbook.hasFaults()).as(workbook.diagnostics().toString()).isFalse();
    return workbook.fill();
  }
}
