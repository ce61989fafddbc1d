package org.battenbook.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.util.Map;
import java.util.stream.Stream;
import org.battenbook.edit.WorkbookEdit;
import org.battenbook.workbook.EditLaw;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.Workbook;
import org.junit.jupiter.params.provider.MethodSource;

/** Edits of a small workbook, each against reading the edited text. */
class EditFuzzTest {
  private static final int MOST_EDITS = 4;

  static Stream<byte[]> seeds() throws IOException {
    return Seeds.edits();
  }

  @MethodSource("seeds")
  @FuzzTest
  void edits(byte[] input) {
    Bounds.check(() -> edit(FilesInOneText.of(input)));
  }

  private static void edit(FilesInOneText files) {
    Workbook workbook = files.open();
    if (workbook.hasFaults()) {
      return;
    }
    Map<String, String> texts = files.texts();
    EditLaw law = new EditLaw(texts, edited -> FilesInOneText.of(edited).open());
    Filled filled = workbook.fill();
    for (String line : texts.getOrDefault("edits", "").lines().limit(MOST_EDITS).toList()) {
      WorkbookEdit edit = TypedEdit.of(line, filled);
      Filled after = edit == null ? null : law.check(filled, edit, line);
      filled = after == null ? filled : after;
    }
  }
}
