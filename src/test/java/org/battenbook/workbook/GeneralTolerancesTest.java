package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.StringJoiner;
import java.util.stream.Stream;
import org.battenbook.number.Rational;
import org.battenbook.unit.Quantity;
import org.battenbook.unit.Units;
import org.battenbook.value.Value;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * The general tolerances of lengths against ISO 2768-1: several public copies agree on these
 * values; one has those of an older standard in the first cells of class c.
 */
class GeneralTolerancesTest {
  private static final List<String> CLASSES =
      List.of("fine tolerance", "medium tolerance", "coarse tolerance", "very coarse tolerance");

  /** The upper end of each range, which is in it, and the four classes; - where there is none. */
  private static final List<String> RANGES =
      List.of(
          "3    0.05 0.1 0.2 -",
          "6    0.05 0.1 0.3 0.5",
          "30   0.1  0.2 0.5 1",
          "120  0.15 0.3 0.8 1.5",
          "400  0.2  0.5 1.2 2.5",
          "1000 0.3  0.8 2   4",
          "2000 0.5  1.2 3   6",
          "4000 -    2   4   8");

  private record Case(String name, String size, String expected) {}

  private static List<Case> cases() {
    return RANGES.stream()
        .flatMap(
            range -> {
              String[] cells = range.split(" +", -1);
              String next = next(cells[0]);
              return Stream.iterate(0, i -> i < 4, i -> i + 1)
                  .flatMap(
                      i ->
                          Stream.of(
                              new Case(CLASSES.get(i), cells[0], cells[i + 1]),
                              new Case(CLASSES.get(i), cells[0] + ".01", cell(next, i + 1))));
            })
        .toList();
  }

  private static String next(String upTo) {
    int at =
        RANGES.indexOf(
            RANGES.stream().filter(r -> r.startsWith(upTo + " ")).findFirst().orElseThrow());
    return at + 1 < RANGES.size() ? RANGES.get(at + 1) : "- - - - -";
  }

  private static String cell(String range, int at) {
    return Arrays.asList(range.split(" +", -1)).get(at);
  }

  @TestFactory
  Stream<DynamicTest> a_range_ends_with_its_upper_size() {
    StringJoiner text =
        new StringJoiner(
            "\n", "workbook \"iso\"\nfollows \"tolerances.batten\"\npage sizes\n", "\n");
    List<Case> cases = cases();
    for (int i = 0; i < cases.size(); i++) {
      text.add("  x%d = %s(%s mm)".formatted(i, cases.get(i).name(), cases.get(i).size()));
    }
    Filled filled = ShippedFiles.open(text.toString()).fill();
    return Stream.iterate(0, i -> i < cases.size(), i -> i + 1)
        .map(
            i ->
                DynamicTest.dynamicTest(
                    cases.get(i).toString(),
                    () -> assertSame(cases.get(i), filled.find("x" + i).value())));
  }

  private static void assertSame(Case one, Value found) {
    if (one.expected().equals("-")) {
      assertThat(found).isInstanceOf(Value.Fault.class);
    } else {
      Quantity expected =
          Quantity.of(Rational.parse(one.expected()), Units.find("mm").orElseThrow());
      assertThat(found).isEqualTo(new Value.Amount(expected));
    }
  }

  @Test
  void a_size_is_as_far_off_as_the_standard_lets_it() {
    Filled filled =
        ShippedFiles.open(
                """
                workbook "iso"
                follows "tolerances.batten"
                page p
                  width = 30 mm ± medium tolerance(30 mm)
                  depth = 100 mm ± coarse tolerance(100 mm)
                  both  = width + depth
                """)
            .fill();
    assertThat(filled.errors("both").worst())
        .isEqualTo(Quantity.of(Rational.ONE, Units.find("mm").orElseThrow()));
  }
}
