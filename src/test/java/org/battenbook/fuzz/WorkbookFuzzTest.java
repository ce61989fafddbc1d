package org.battenbook.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;

/** A small workbook is read, checked, filled, asked and exported. */
class WorkbookFuzzTest {
  static Stream<byte[]> seeds() throws IOException {
    return Seeds.workbooks();
  }

  @MethodSource("seeds")
  @FuzzTest
  void workbook(byte[] input) {
    Bounds.check(() -> Answers.check(FilesInOneText.of(input)));
  }
}
