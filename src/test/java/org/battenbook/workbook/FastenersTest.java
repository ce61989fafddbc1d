package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.battenbook.number.Rational;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws of the fasteners of a wall cleat in a wall with studs, wherever its first stud stands. */
class FastenersTest {
  private static final long SEED = 20_261_125;

  /** Outside sizes of frames, across: from the shortest cleat that has room to one of six feet. */
  private static final List<String> WIDTHS =
      List.of("8", "8 1/8", "9", "9 1/2", "10 5/8", "12", "16", "19 1/4", "24", "30", "48", "72");

  /** First studs at 0, 1/2, 1 … 16 in. */
  private static final int WALLS = 33;

  /** Studs as walls have them, and others, down to a few inches. */
  static IntStream studsApart() {
    return IntStream.concat(IntStream.of(16, 24), new Random(SEED).ints(3, 4, 30));
  }

  @ParameterizedTest
  @MethodSource("studsApart")
  void fasteners_keep_an_inch_apart_within_their_cleat(int studsApart) {
    Filled filled = job(studsApart).fill();
    assertThat(filled.faults()).isEmpty();
    frames().forEach(frame -> keepApart(filled, frame, told(studsApart)));
  }

  @ParameterizedTest
  @MethodSource("studsApart")
  void each_stud_behind_a_cleat_takes_a_fastener_where_fasteners_stand_closer(int studsApart) {
    Filled filled = job(studsApart).fill();
    List<String> closer =
        frames()
            .filter(
                frame ->
                    exact(filled, "fasteners apart of " + frame).compareTo(Rational.of(studsApart))
                        <= 0)
            .toList();
    assertThat(closer).isNotEmpty();
    for (String frame : closer) {
      assertThat(exact(filled, "screws in wood of " + frame))
          .as("%s: %s", told(studsApart), frame)
          .isGreaterThanOrEqualTo(exact(filled, "studs behind of " + frame));
    }
  }

  private static void keepApart(Filled filled, String frame, String told) {
    List<Rational> fasteners = fasteners(filled, frame);
    assertThat(fasteners).as(told).hasSizeGreaterThanOrEqualTo(3);
    assertThat(fasteners.get(0))
        .as("%s: %s", told, fasteners)
        .isGreaterThanOrEqualTo(Rational.ZERO);
    for (int i = 1; i < fasteners.size(); i++) {
      assertThat(fasteners.get(i).minus(fasteners.get(i - 1)))
          .as("%s: %s, %s", told, frame, fasteners)
          .isGreaterThanOrEqualTo(Rational.ONE);
    }
    assertThat(fasteners.get(fasteners.size() - 1))
        .as("%s: %s, %s", told, frame, fasteners)
        .isLessThanOrEqualTo(exact(filled, "cleat length of " + frame));
  }

  /** From the left end of its cleat, in inches. */
  private static List<Rational> fasteners(Filled filled, String frame) {
    int count = exact(filled, "fasteners here of " + frame).floor().intValueExact();
    List<Rational> fasteners = new ArrayList<>();
    for (int number = 1; number <= count; number++) {
      fasteners.add(
          exact(filled, "from left of wall fasteners \"%s: %d\"".formatted(frame, number)));
    }
    return fasteners;
  }

  private static Rational exact(Filled filled, String place) {
    String exact = filled.find(place).exact();
    int bar = exact.indexOf('/');
    return bar < 0
        ? Rational.of(Long.parseLong(exact))
        : Rational.of(
            Long.parseLong(exact.substring(0, bar)), Long.parseLong(exact.substring(bar + 1)));
  }

  private static String told(int studsApart) {
    return "seed %d, studs %d in apart".formatted(SEED, studsApart);
  }

  private static Stream<String> frames() {
    return IntStream.range(0, WALLS)
        .boxed()
        .flatMap(wall -> WIDTHS.stream().map(width -> "%s in on %d".formatted(width, wall)));
  }

  private static StandardJob job(int studsApart) {
    List<String> walls = new ArrayList<>(List.of("wall | width | first stud | studs apart"));
    List<String> pieces =
        new ArrayList<>(List.of("title | wall | width | height | top rail | moulding"));
    for (int wall = 0; wall < WALLS; wall++) {
      Rational first = Rational.of(wall, 2);
      walls.add("\"%d\" | 400 in | (%s in) | %d in".formatted(wall, half(first), studsApart));
      for (String width : WIDTHS) {
        pieces.add(
            "\"%s in on %d\" | \"%d\" | 8 in | 12 in | %s in | \"ash cap\""
                .formatted(width, wall, wall, width));
      }
    }
    return new StandardJob()
        .rows("walls", "walls", walls.toArray(String[]::new))
        .rows("pieces", "pieces", pieces.toArray(String[]::new));
  }

  private static String half(Rational length) {
    return length.isWhole() ? length.toString() : length.floor() + ".5";
  }
}
