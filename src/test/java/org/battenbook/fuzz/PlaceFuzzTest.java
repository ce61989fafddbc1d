package org.battenbook.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.battenbook.answer.WhyAnswer;
import org.battenbook.book.Loader;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.UnknownPlace;
import org.battenbook.workbook.Workbook;
import org.junit.jupiter.params.provider.MethodSource;

/** Places as people type them, asked of a job that is opened once. */
class PlaceFuzzTest {
  private static final Filled JOB = job();

  private static Filled job() {
    try {
      return Workbook.open("workbooks/first-frame.batten").fill();
    } catch (Loader.Unreadable missing) {
      throw new IllegalStateException(missing);
    }
  }

  static Stream<byte[]> seeds() {
    List<String> places = new ArrayList<>(Seeds.places(JOB));
    places.addAll(List.of("", " of ", "saw kerf", "x of y of z", "no place of \"x\""));
    return places.stream().map(place -> place.getBytes(UTF_8));
  }

  @MethodSource("seeds")
  @FuzzTest
  void place(byte[] input) {
    Bounds.check(() -> ask(new String(input, UTF_8)));
  }

  private static void ask(String place) throws IOException {
    try {
      WhyAnswer.of(JOB, JOB.why(place)).writeTo(OutputStream.nullOutputStream());
      JOB.feeds(place);
      JOB.errors(place);
    } catch (UnknownPlace unknown) {
      if (String.valueOf(unknown.getMessage()).isBlank()) {
        throw new AssertionError("says nothing", unknown);
      }
    }
  }
}
