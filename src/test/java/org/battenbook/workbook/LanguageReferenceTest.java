package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.battenbook.parse.WorkbookParser;
import org.battenbook.source.Diagnostic;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.battenbook.value.Value;
import org.junit.jupiter.api.Test;

/** The workbook in {@code workbooks/LANGUAGE.md} is one that can be filled. */
class LanguageReferenceTest {
  private static final Pattern FRAGMENT = Pattern.compile("```text\n(.*?)```", Pattern.DOTALL);
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

  @Test
  void every_other_sample_of_the_language_reference_is_in_the_language() throws IOException {
    List<String> samples =
        FRAGMENT
            .matcher(Files.readString(Path.of("workbooks/LANGUAGE.md")))
            .results()
            .map(found -> found.group(1))
            .toList();
    assertThat(samples).hasSize(5).allSatisfy(LanguageReferenceTest::parses);
  }

  private static void parses(String sample) {
    Diagnostics diagnostics = new Diagnostics();
    WorkbookParser.parse(SourceText.of("sample", head(sample) + sample), diagnostics);
    assertThat(diagnostics.inOrder()).as(sample).isEmpty();
  }

  /** What a sample leaves out above it. */
  private static String head(String sample) {
    if (sample.startsWith("workbook")) {
      return "";
    }
    return sample.startsWith("follows") ? "workbook \"t\"\n" : "workbook \"t\"\npage p\n";
  }
}
