package org.battenbook.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;

/** The rows of a table with columns of every kind. */
class RowsFuzzTest {
  private static final String HEAD =
      """
      workbook "Rows"
      currency USD
      page p
        table pieces by title
          given
            title  : text
            width  : length
            area   : area
            weight : mass
            tilt   : angle
            count  : count
            share  : ratio
            cost   : money
            rate   : money / length
            warm   : temperature difference
            hung   : yes or no
            due    : date
            due in : time
            beside : row of pieces
          worked out
            next   = if first row then width else above.next + width
            twice  = 2 * width ± 1/16 in
            known  = beside.width
        rows of pieces
      """;

  static final List<String> HEADINGS =
      List.of("width", "count", "cost", "rate", "warm", "hung", "due", "beside", "twice");

  static Stream<byte[]> seeds() throws IOException {
    return Seeds.rows();
  }

  @MethodSource("seeds")
  @FuzzTest
  void rows(byte[] input) {
    Bounds.check(() -> Answers.check(new FilesInOneText(HEAD + new String(input, UTF_8))));
  }
}
