package org.battenbook.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.Map;
import java.util.stream.Stream;
import org.battenbook.keep.Keeping;
import org.battenbook.keep.NotKept;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.Workbook;
import org.junit.jupiter.params.provider.MethodSource;

/** What plans take is kept, and the job is opened again: nothing is planned twice. */
class KeepFuzzTest {
  private static final String OUT_OF_THE_RACK =
      """
      slats "a" | 15 in | 1
      rack "one" | 20 in | 2 - 1 | false
      """;

  private static final String NAMED_ALIKE =
      """
      slats "a" | 15 in | 1
      shop "dear" | 20 in
      shop "long" | 90 in
      rack "Bench, ash: 1" | 9 in | 0 | true
      """;

  static Stream<byte[]> seeds() {
    return Stream.of(Bench.ROWS, OUT_OF_THE_RACK, NAMED_ALIKE).map(rows -> rows.getBytes(UTF_8));
  }

  @MethodSource("seeds")
  @FuzzTest
  void keep(byte[] input) {
    Bounds.check(() -> keepTwice(Bench.with(new String(input, UTF_8))));
  }

  private static void keepTwice(Map<String, String> bench) {
    Workbook workbook = FilesInOneText.of(bench).open();
    if (workbook.hasFaults()) {
      return;
    }
    try {
      Keeping keeping = keeping(workbook.fill());
      Bench.revise(bench, keeping.texts());
    } catch (NotKept not) {
      checkTold(not);
      return;
    }
    checkKept(FilesInOneText.of(bench).open());
  }

  private static Keeping keeping(Filled filled) throws NotKept {
    return Keeping.of(filled, filled.plans());
  }

  private static void checkTold(NotKept not) {
    if (not.message().isBlank()) {
      throw new AssertionError("says nothing", not);
    }
  }

  private static void checkKept(Workbook again) {
    if (again.hasFaults()) {
      throw new AssertionError("kept with a fault: " + again.diagnostics().get(0).message());
    }
    try {
      Keeping twice = keeping(again.fill());
      throw new AssertionError("is kept twice: " + twice.changes());
    } catch (NotKept asItShould) {
      checkTold(asItShould);
    }
  }
}
