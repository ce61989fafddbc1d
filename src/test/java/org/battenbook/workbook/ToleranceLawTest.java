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
  private static final int OPENED_JOBS = 6;

  /** Where a formula with a tolerance stands, and what may be written there instead. */
  private record Source(String place, String formula, Rational tolerance) {
    String at(int side) {
      return "%s + %s * %s mm".formatted(formula, side < 0 ? "(0 - 1)" : "1", tolerance);
    }

    String written() {
      return "%s ± %s mm".formatted(formula, tolerance);
    }
  }

  /** Formulas and tolerances at random. */
  private static class Drawn {
    final Random random;
    final List<Source> sources = new ArrayList<>();

    Drawn(Random random) {
      this.random = random;
    }

    /** A number with a tolerance. */
    String number(String place) {
      return off(place, Rational.of(10 + random.nextInt(400), 4) + " mm");
    }

    /** A formula with a tolerance. */
    String off(String place, String formula) {
      Source source = new Source(place, formula, Rational.of(1 + random.nextInt(9), 20));
      sources.add(source);
      return source.written();
    }

    String sum(String x, String y, String z) {
      return switch (random.nextInt(5)) {
        case 0 -> "%s - 3 * (%s - %s) + %s".formatted(x, y, z, x);
        case 1 -> "mix(%s, %s) - %s / 4".formatted(x, y, z);
        case 2 -> "(if limit > 20 mm then %s - %s else max(%s, 0 mm)) + %s".formatted(x, y, z, z);
        case 3 -> "-(%s) + (limit / 30 mm) * %s - %s".formatted(x, y, z);
        default -> "%s + %s + %s - %s".formatted(x, y, z, x);
      };
    }

    /** Lines a0, a1 and a2, which are off, and what formulas of {@link #sum} read. */
    String head() {
      StringBuilder text = new StringBuilder();
      text.append("to find mix(x, y) = x - y / 2 + x\npage p\n  limit = 50 mm\n");
      for (int i = 0; i < LINES; i++) {
        text.append("  a%d = %s\n".formatted(i, number("a" + i)));
      }
      return text.toString();
    }
  }

  private static final class Job extends Drawn {
    final StringBuilder text = new StringBuilder("workbook \"law\"\n");

    Job(Random random) {
      super(random);
      text.append(head());
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
        String size = number("size of p" + row);
        String own = random.nextInt(3) == 0 ? number("long of p" + row) : "";
        text.append(
            "    \"p%d\" | %s | \"p%d\" | %s\n".formatted(row, size, random.nextInt(ROWS), own));
      }
    }
  }

  /** Rows that two tables open, some filled in, and changes of a line, a column and a cell. */
  private static final class Opened extends Drawn {
    final String standards;
    final String job;

    Opened(Random random) {
      super(random);
      standards =
          head()
              + "  b = %s\n".formatted(sum("a0", "a1", "a2"))
              + TABLES.formatted(
                  sum("square.side", "a0", "b"),
                  sum("round.wide", "2 * round.wide", "a1"),
                  sum("across", "b", "a2"),
                  sum("across", "a1", "a0"))
              + given("squares", "title", "side", "q")
              + given("rounds", "name", "wide", "r")
              + filledIn();
      job =
          """
          workbook "law"
          follows "standards.batten"
          change b = %s because "it is another lot"
          change drop of hung = %s because "it hangs lower"
          change across of hung "r0" = %s because "it was measured"
          """
              .formatted(
                  off("b", sum("b", "a0", "a2")),
                  sum("drop", "across", "b"),
                  off("across of r0", sum("a0", "b", "a1")));
    }

    private static final String TABLES =
        """
          table squares by title
            given
              title : text
              side  : length
          table rounds by name
            given
              name : text
              wide : length
          table hung by hung
            for each square of squares
              across = %s
            for each round of rounds
              across = %s
            given
              across : length
              other  : row of hung = "q0"
            worked out
              many  = count of hung where other = this
              drop  = %s
              gap   = if first row then drop else if above.many > 1 then %s else many * across
              value = gap + other.drop / 2 - other.other.across
        """;

    private String given(String table, String key, String column, String first) {
      StringBuilder rows = new StringBuilder();
      rows.append("  rows of %s\n    %s | %s\n".formatted(table, key, column));
      for (int row = 0; row < ROWS; row++) {
        String name = first + row;
        rows.append("    \"%s\" | %s\n".formatted(name, number(column + " of " + name)));
      }
      return rows.toString();
    }

    private String filledIn() {
      StringBuilder rows = new StringBuilder("  rows of hung\n    hung | other | across | drop\n");
      for (String name : List.of("q0", "q1", "q2", "r0", "r1", "r2")) {
        String other = (random.nextBoolean() ? "q" : "r") + random.nextInt(ROWS);
        boolean isChanged = name.equals("r0");
        String across = isChanged ? "" : maybe("across of " + name, sum("a0", "a2", "b"));
        String drop = maybe("drop of " + name, sum("a1", "b", "across"));
        rows.append("    \"%s\" | \"%s\" | %s | %s\n".formatted(name, other, across, drop));
      }
      return rows.toString();
    }

    private String maybe(String place, String formula) {
      return switch (random.nextInt(6)) {
        case 0 -> number(place);
        case 1 -> off(place, formula);
        default -> "";
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

  @Test
  void it_is_so_in_opened_rows_and_through_changes() {
    for (long seed = 1; seed <= OPENED_JOBS; seed++) {
      Opened job = new Opened(new Random(seed));
      Filled filled =
          new TextLoader()
              .with("job.batten", job.job)
              .with("standards.batten", job.standards)
              .open()
              .fill();
      for (String place : List.of("value of q1", "value of r0", "drop of r2")) {
        check(
            job,
            filled,
            place,
            "seed %d, %s in%n%s%s".formatted(seed, place, job.job, job.standards));
      }
    }
  }

  private static void check(Drawn job, Filled filled, String place, String as) {
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
