package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.battenbook.source.Diagnostic;
import org.battenbook.value.Value;
import org.junit.jupiter.api.Test;

/** The workbook in {@code workbooks/LANGUAGE.md} is one that can be filled. */
class LanguageReferenceTest {
  private static final Pattern SAMPLE = Pattern.compile("```batten\n(.*?)```", Pattern.DOTALL);

  @Test
  void the_sample_of_the_language_reference_fills() throws IOException {
    Matcher sample = SAMPLE.matcher(Files.readString(Path.of("workbooks/LANGUAGE.md")));
    assertThat(sample.find()).isTrue();
    Workbook job = TextLoader.of(sample.group(1)).open();
    assertThat(job.diagnostics()).filteredOn(Diagnostic::isFault).isEmpty();
    Filled filled = job.fill();
    assertThat(filled.faults()).isEmpty();
    assertThat(filled.find("top rail of Tide chart").exact()).isEqualTo("115/8");
    assertThat(filled.find("first stick").value())
        .isInstanceOfSatisfying(
            Value.Row.class, row -> assertThat(row.name()).isEqualTo("ash cap"));
  }
}
