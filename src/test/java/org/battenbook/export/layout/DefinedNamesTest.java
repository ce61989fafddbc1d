package org.battenbook.export.layout;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

class DefinedNamesTest {
  private final DefinedNames names = new DefinedNames();

  @Test
  void words_are_joined_and_end_in_a_line_below() {
    assertThat(names.name("rail step", "allowances")).isEqualTo("rail_step_");
    assertThat(names.name("lip2", "mouldings")).isEqualTo("lip2_");
    assertThat(names.name("2nd mat", "mats")).isEqualTo("_2nd_mat_");
  }

  @Test
  void a_line_of_the_same_name_on_another_page_takes_its_page_along() {
    assertThat(names.name("total", "glass")).isEqualTo("total_");
    assertThat(names.name("Total", "wood")).isEqualTo("wood_Total_");
    assertThat(names.name("total", "wood")).isEqualTo("wood_total_2_");
  }

  @Test
  void every_name_is_legal_to_the_library() throws Exception {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      book.createSheet("Page");
      for (String line : new String[] {"R1C1", "A1", "r", "é½", "x".repeat(300), "true", "Maß 3"}) {
        var name = book.createName();
        name.setNameName(names.name(line, "page"));
        name.setRefersToFormula("Page!$A$1");
      }
      assertThat(book.getAllNames()).hasSize(7);
    }
  }
}
