package org.battenbook.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.stream.Stream;
import org.battenbook.edit.WorkbookEdit;
import org.battenbook.workbook.EditLaw;
import org.battenbook.workbook.Filled;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Edits of a workbook, each against reading the edited text. An input says in its first line which
 * workbook, by a number, and in each further line an edit.
 */
class EditFuzzTest {
  private static final int MOST_EDITS = 4;

  private static final List<Job> JOBS = jobs();

  /** A job that is opened once. */
  private record Job(EditLaw law, Filled filled) {
    static Job of(String text) {
      FilesInOneText files = new FilesInOneText(text);
      EditLaw law = new EditLaw(files.texts(), texts -> FilesInOneText.of(texts).open());
      return new Job(law, files.open().fill());
    }
  }

  private static List<Job> jobs() {
    try {
      return Seeds.jobs().stream().map(Job::of).toList();
    } catch (IOException missing) {
      throw new UncheckedIOException(missing);
    }
  }

  static Stream<byte[]> seeds() {
    return Seeds.edits(JOBS.size());
  }

  @MethodSource("seeds")
  @FuzzTest
  void edits(byte[] input) {
    List<String> lines = new String(input, UTF_8).lines().limit(1 + MOST_EDITS).toList();
    if (!lines.isEmpty()) {
      Job job = JOBS.get(TypedEdit.number(lines.get(0)) % JOBS.size());
      Bounds.check(() -> edit(job, lines.subList(1, lines.size())));
    }
  }

  private static void edit(Job job, List<String> lines) {
    Filled filled = job.filled();
    for (String line : lines) {
      WorkbookEdit edit = TypedEdit.of(line, filled);
      Filled after = edit == null ? null : job.law().check(filled, edit, line);
      filled = after == null ? filled : after;
    }
  }
}
