package org.battenbook.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;

/** A .csv list in which rows of a table stand. */
class CsvListFuzzTest {
  static Stream<byte[]> seeds() {
    return Stream.of(
            "name,price (USD/ft),face,sold\n\"ash cap\",4.25,1 1/2 in,yes\noak,5,38 mm,no\n",
            "Prices of 2026\n\nface (mm);name;sold\n12,5;\"a;\"\"b\"\"\";true\n",
            "name,face [in]\r\n'=1+1,3/8\r\n-x,\"1' 3 1/2\"\"\"\r\n")
        .map(list -> list.getBytes(UTF_8));
  }

  @MethodSource("seeds")
  @FuzzTest
  void list(byte[] input) {
    Bounds.check(() -> Answers.check(ListedJob.of("list.csv", input)));
  }
}
