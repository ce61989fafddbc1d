package org.battenbook.export.layout;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.poi.ss.util.WorkbookUtil;
import org.junit.jupiter.api.Test;

class SheetNamesTest {
  private final SheetNames names = new SheetNames();

  @Test
  void a_title_that_is_legal_is_kept() {
    assertThat(names.name("Glazing and boards")).isEqualTo("Glazing and boards");
  }

  @Test
  void what_no_sheet_may_be_called_is_mended() {
    assertThat(names.name("Mats: single/double [2]?")).isEqualTo("Mats single double 2");
    assertThat(names.name("'quoted'")).isEqualTo("quoted");
    assertThat(names.name("***")).isEqualTo("Page");
    assertThat(names.name("History")).isEqualTo("History (2)");
  }

  /** Ranges that repeat on each printed page are listed with commas between them. */
  @Test
  void a_comma_is_left_out() {
    assertThat(names.name("Rails, sticks")).isEqualTo("Rails sticks");
  }

  @Test
  void two_titles_that_differ_in_case_alone_give_two_names() {
    assertThat(names.name("Mats")).isEqualTo("Mats");
    assertThat(names.name("mats")).isEqualTo("mats (2)");
    assertThat(names.name("MATS")).isEqualTo("MATS (3)");
  }

  @Test
  void long_titles_are_cut_and_still_differ() {
    String title = "Saltmarsh Ferry Museum: upper landing";
    assertThat(names.name(title)).isEqualTo("Saltmarsh Ferry Museum upper la");
    assertThat(names.name(title)).isEqualTo("Saltmarsh Ferry Museum uppe (2)");
  }

  @Test
  void every_name_is_legal_to_the_library() {
    for (String title : new String[] {"", " ", "a".repeat(40), "it's", "x\u0000y", "a\tb", "Π/2"}) {
      WorkbookUtil.validateSheetName(names.name(title));
    }
  }
}
