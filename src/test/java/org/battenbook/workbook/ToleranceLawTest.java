package org.battenbook.workbook;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.battenbook.bind.Spot;
import org.battenbook.book.Column;
import org.battenbook.derive.ErrorBudget;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.value.Value;
import org.junit.jupiter.api.Test;

/**
 * The law of tolerances: what a value is off by at worst is the most that it moves when every
 * source is edited to one end of its tolerance or the other, over all combinations; and the root of
 * the sum of squares is that of its moves when one source is edited at a time.
 */
class ToleranceLawTest {
  private static final int JOBS = 25;
  private static final int LINES = 3;
  private static final int ROWS = 3;

  /** Where a number with a tolerance stands, and what may be written there instead. */
  private record Source(String place, Rational value, Rational tolerance) {
    String at(int side) {
      return value.plus(tolerance.times(Rational.of(side))) + " mm";
    }
  }

  private static final class Job {
    final Random random;
    final List<Source> sources = new ArrayList<>();
    final StringBuilder text = new StringBuilder("workbook \"law\"\n");

    Job(Random random) {
      this.random = random;
      text.append("to find mix(x, y) = x - y / 2 + x\npage p\n  limit = 50 mm\n");
      for (int i = 0; i < LINES; i++) {
        text.append("  a%d = %s\n".formatted(i, written("a" + i)));
      }
      text.append("  b = ").append(sum("a0", "a1", "a2")).append('\n');
      text.append("  c = ").append(sum("b", "a1", "a0")).append('\n');
      text.append(
          """
            table parts by name
              given
                name  : text
                size  : length
                other : row of parts = "p0"
              worked out
                long = %s
                sum  = %s
            rows of parts
              name | size | other | long
          """
              .formatted(sum("size", "c", "a2"), sum("long", "other.long", "other.other.size")));
      for (int row = 0; row < ROWS; row++) {
        String size = written("size of p" + row);
        String own = random.nextInt(3) == 0 ? written("long of p" + row) : "";
        text.append(
            "    \"p%d\" | %s | \"p%d\" | %s\n".formatted(row, size, random.nextInt(ROWS), own));
      }
    }

    private String written(String place) {
      Rational value = Rational.of(10 + random.nextInt(400), 4);
      Rational tolerance = Rational.of(1 + random.nextInt(9), 20);
      sources.add(new Source(place, value, tolerance));
      return "%s mm ± %s mm".formatted(value, tolerance);
    }

    private String sum(String x, String y, String z) {
      return switch (random.nextInt(5)) {
        case 0 -> "%s - 3 * (%s - %s) + %s".formatted(x, y, z, x);
        case 1 -> "mix(%s, %s) - %s / 4".formatted(x, y, z);
        case 2 -> "(if limit > 20 mm then %s - %s else max(%s, 0 mm)) + %s".formatted(x, y, z, z);
        case 3 -> "-(%s) + (limit / 30 mm) * %s - %s".formatted(x, y, z);
        default -> "%s + %s + %s - %s".formatted(x, y, z, x);
      };
    }
  }

  @Test
  void worst_is_the_most_that_any_combination_moves_a_value() {
    for (long seed = 1; seed <= JOBS; seed++) {
      Job job = new Job(new Random(seed));
      Filled filled = TextLoader.of(job.text.toString()).open().fill();
      for (String place : List.of("c", "sum of p0", "sum of p1", "sum of p2")) {
        check(job, filled, place, "seed %d, %s in%n%s".formatted(seed, place, job.text));
      }
    }
  }

  private static void check(Job job, Filled filled, String place, String as) {
    ErrorBudget errors = filled.errors(place);
    Real worst = requireNonNull(errors.worst(), as).number();
    Real root = requireNonNull(errors.rootSumSquare(), as).number();
    Real sum = Rational.ZERO;
    Real squares = Rational.ZERO;
    Filled high = filled;
    for (Source source : job.sources) {
      Real up = number(edited(filled, source, 1), place);
      Real down = number(edited(filled, source, -1), place);
      Real move = up.minus(down).dividedBy(Rational.of(2));
      sum = sum.plus(move.abs());
      squares = squares.plus(move.times(move));
      high = edited(high, source, move.signum() < 0 ? -1 : 1);
    }
    Real farthest = number(high, place).minus(number(filled, place));
    assertThat(worst).as(as).isEqualTo(farthest).isEqualTo(sum);
    assertThat(root.times(root).compareTo(squares)).as(as).isZero();
  }

  private static Real number(Filled filled, String place) {
    return ((Value.Amount) filled.find(place).value()).quantity().number();
  }

  /** The workbook with a source at one end of its tolerance. */
  private static Filled edited(Filled filled, Source source, int side) {
    Spot spot = filled.spot(source.place());
    Edit edit =
        spot.place() instanceof Column column
            ? filled.withCell(column, spot.row(), source.at(side))
            : filled.withFormula(spot.place(), source.at(side));
    return requireNonNull(edit.filled(), () -> edit.diagnostics().toString());
  }

  @Test
  void all_corners_of_a_few_sources_stay_within_the_worst() {
    long seed = 77;
    Job job = new Job(new Random(seed));
    Filled filled = TextLoader.of(job.text.toString()).open().fill();
    List<Source> few = job.sources.subList(0, Math.min(6, job.sources.size()));
    for (String place : List.of("b", "c")) {
      Real worst = requireNonNull(filled.errors(place).worst()).number();
      Real most = Rational.ZERO;
      for (int corner = 0; corner < 1 << few.size(); corner++) {
        Filled moved = filled;
        for (int i = 0; i < few.size(); i++) {
          moved = edited(moved, few.get(i), (corner >> i & 1) * 2 - 1);
        }
        Real off = number(moved, place).minus(number(filled, place)).abs();
        most = off.compareTo(most) > 0 ? off : most;
      }
      assertThat(worst).as("seed %d, %s in%n%s", seed, place, job.text).isEqualTo(most);
    }
  }
}
