package org.battenbook.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;

/** An .xlsx list in which rows of a table stand. */
class XlsxListFuzzTest {
  static Stream<byte[]> seeds() {
    return Stream.of(XlsxParts.SHEET, XlsxParts.all()).map(parts -> parts.getBytes(UTF_8));
  }

  @MethodSource("seeds")
  @FuzzTest
  void list(byte[] input) {
    Bounds.check(() -> Answers.check(ListedJob.of("list.xlsx", XlsxParts.packed(input))));
  }
}
