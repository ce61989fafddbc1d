package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import org.battenbook.book.Loader;
import org.battenbook.source.SourceText;
import org.junit.jupiter.api.Test;

/** The example of the front door in DEVELOPERS.md. */
class LibraryExampleTest {

  @Test
  void a_job_is_opened_filled_asked_and_edited() throws Loader.Unreadable {
    Workbook job = Workbook.open("workbooks/saltmarsh-ferry-museum.batten");
    assertThat(job.hasFaults()).isFalse();
    Filled filled = job.fill();
    FilledValue rail = filled.find("top rail of Tide chart, north");
    assertThat(rail.shown().text() + " is exactly " + rail.exact() + " " + rail.unit())
        .isEqualTo("19 7/16 in is exactly 311/16 in");
    Edit edit = filled.withFormula(filled.spot("markup").place(), "85 %");
    assertThat(edit.diagnostics()).isEmpty();
    assertThat(edit.ran()).hasSizeGreaterThan(10).hasSizeLessThan(300);
    assertThat(edit.texts().keySet()).extracting(SourceText::shortName).hasSize(1);
  }
}
