package org.battenbook.workbook;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.battenbook.number.Rational;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** By which ways errors come into a value. Each figure is worked out by hand. */
class ToleranceWaysTest {

  /** Of "k" are two parts, of "l" one; the largest of the sure parts is "three". */
  private static final String PARTS =
      """
      workbook "w"
      currency USD
      lengths in 0.01 mm
      to find twice(x) = 2 * x
      to find both(part) = part.size + part.base.size
      page p
        off = 1 mm ± 0.1 mm
        table kinds by kind
          given
            kind  : text
            extra : length
          worked out
            many = count of parts where kind = this
        table parts by name
          given
            name : text
            size : length
            base : row of parts = "one"
            kind : row of kinds = "k"
            due  : date = 2026-05-01
            sure : yes or no = true
            note : text = "new"
          worked out
            scaled = size * kind.many
            best   = row of parts where sure with largest size
            value = %s
        rows of kinds
          kind | extra
          "k"  | 2 mm ± 0.01 mm
          "l"  | 3 mm
        rows of parts
          name    | size          | base  | kind | due        | sure  | note
          "one"   | 5 mm ± 0.2 mm | "two" | "l"  |            |       |
          "two"   | 6 mm ± 0.3 mm |       |      | 2026-06-01 | false | "old"
          "three" | 7 mm          |       |      |            |       |
      """;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          if due < 2026-05-02 then size else 2 * size         | one   | 0.2  | a date decides
          if due < 2026-05-02 then size else 2 * size         | two   | 0.6  | and decides otherwise
          if true then size else off                          | two   | 0.3  | what always holds
          if sure then size else 2 * size                     | one   | 0.2  | yes or no
          if sure then size else 2 * size                     | two   | 0.6  | or no
          if note = "new" then size else 2 * size             | two   | 0.6  | a text decides
          if kind = "l" then size else 2 * size               | one   | 0.2  | a row decides
          if kind = "l" then size else 2 * size               | two   | 0.6  | another row
          if first row then size else off                     | one   | 0.2  | in the first row
          if first row then size else off                     | two   | 0.1  | in any other row
          if first row then 2 mm else if above.sure then off else 2 * off | two   | 0.1  | the row above is sure
          if first row then 2 mm else if above.sure then off else 2 * off | three | 0.2  | and there it is not
          if first row then off else above.base.size          | two   | 0.3  | the row that the row above names
          if first row then off else above.base.size          | three | 0.2  | which is another one here
          (if sure then size else off) * (if sure then 2 else 3) | two | 0.3 | a factor that is chosen
          size * max(2, 3)                                    | two   | 0.9  | a factor that a function gives
          size * twice(kind.many)                             | two   | 1.2  | a function of the workbook: 4
          size * minor unit / minor unit                      | one   | 0.2  | by a coin, and over it
          size * (3 mm) / (2 mm)                              | two   | 0.45 | by a length, and over one
          size * (count of parts)                             | one   | 0.6  | by all rows: 3
          size * (count of parts where sure)                  | two   | 0.6  | by some rows: 2
          size * (count of parts where kind = this.kind)      | two   | 0.6  | by the rows of its own kind: 2
          size * (count of parts where kind = this.kind)      | one   | 0.2  | of which there is one
          size * (sum of 2 over parts where name = this.name) | one   | 0.4  | by a sum
          size * ((largest of 3 mm over parts) / 1 mm)        | one   | 0.6  | by a largest
          size / (smallest of 4 over parts)                   | one   | 0.05 | by a divisor over rows
          if (row of parts with largest size) = "three" then size else off | one | 0.2 | the largest of all rows
          if (row of parts where not sure) = "two" then size else off | one | 0.2 | the only such row
          base.scaled                                         | one   | 0.6  | a factor of the other row: 2
          kind.extra * kind.many                              | two   | 0.02 | of another table
          kind.extra * kind.many                              | one   | 0    | where the other row is exact
          twice(base.size) - twice(size)                      | one   | 1.0  | two rows err by themselves
          both(base)                                          | one   | 0.5  | a function that a row is given
          best.size + size                                    | one   | 0.2  | a row that is chosen is exact
          best.base.size                                      | two   | 0.2  | what the chosen row names
          base.size - size                                    | one   | 0.5  | two rows
          base.base.size - size                               | one   | 0    | the same row by another path
          base.base.size + size                               | two   | 0.6  | whose errors add up
          base.size + base.base.size - size                   | one   | 0.3  | some of three paths to two rows
          base.size + base.base.size + size                   | one   | 0.7  | twice 0.2 and 0.3
          2 * base.size - base.base.size + size               | three | 0.7  | 0.4 and 0.3 and an exact one
          """)
  void an_error_comes_into_a_row(String formula, String row, String worst, String why) {
    WorstCase.of(PARTS.formatted(formula)).assertOff("value of " + row, worst, why);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          first.size + second.size          | 0.5 | two rows
          first.size - second.base.size     | 0   | a row of its own and by another
          second.scaled                     | 0.6 | by a factor of that row
          first.base.scaled                 | 0.6 | and of the row that it names
          twice(first.size) - 2 * both(second) / 2 | 0.5 | 0.4 and 0.2 less, and 0.3
          if first.sure then off else first.size | 0.1 | by what a row says
          off * (count of parts where size > 5 mm) | 0.2 | by some rows: 2
          """)
  void an_error_comes_out_of_rows_into_a_line(String formula, String worst, String why) {
    String job =
        PARTS.formatted("size")
            + """
            page lines
              first : row of parts = "one"
              second : row of parts = "two"
              value = %s
            """
                .formatted(formula);
    WorstCase.of(job.replace("      value = size\n", "")).assertOff("value", worst, why);
  }

  private static final String HUNG =
      """
      workbook "w"
      lengths in 0.01 mm
      page p
        off = 1 mm ± 0.1 mm
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
            across = square.side + off ± 0.02 mm
          for each round of rounds
            across = 2 * round.wide
          given
            across : length = 7 mm ± 0.4 mm
            other  : row of hung = "A"
          worked out
            drop  = 1 mm + across
            value = %s
        rows of squares
          title | side
          "A"   | 5 mm ± 0.2 mm
          "B"   | 6 mm
          "E"   | 6 mm
          "F"   | 6 mm
          "G"   | 6 mm
        rows of rounds
          name | wide
          "C"  | 4 mm
          "D"  | 5 mm ± 0.3 mm
        rows of hung
          hung | across              | other | drop
          "B"  | 9 mm ± 0.05 mm      | "D"   |
          "D"  |                     | "D"   |
          "e"  | off + off ± 0.01 mm | "B"   | 3 mm ± 0.03 mm
          "F"  | 3 * off             | "G"   | 2 * off
          "G"  | 4 * off             | "F"   |
      change across of hung "f" = 8 mm because "it was measured"
      change across of hung "G" = off because "it hangs from another"
      change drop of hung "F" = 3 * off because "it hangs lower"
      """;

  /**
   * A is off by 0.2 of its side, 0.1 and 0.02 of its own: 0.32. B is measured to 0.05, D twice 0.3
   * is 0.6, E is twice 0.1 and 0.01: 0.21; F is changed to be exact, and G to be off by 0.1.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          across                    | A | 0.32 | what the opening says, and its own ±
          across                    | B | 0.05 | a row that fills in
          across                    | C | 0    | of an opening whose source is exact
          across                    | D | 0.6  | and is off in another row
          across                    | E | 0.21 | a formula that fills in, its name in small letters
          across                    | F | 0    | a change of a formula that fills in
          across                    | G | 0.1  | a change by another formula
          2 * across - other.across | A | 0.32 | the row itself by another path
          2 * across - other.across | B | 0.7  | 0.1 and 0.6
          2 * across - other.across | C | 0.32 | of an exact row and one that is off
          2 * across - other.across | D | 0.6  | of an opening without a ± of its own
          other.across - 2 * across | E | 0.47 | 0.05, twice 0.01, and four times 0.1
          other.across - across     | F | 0.1  | a change of another row
          other.across - across     | G | 0.1  | an exact row less one that is off
          drop                      | A | 0.32 | a formula that no row fills in
          drop - across             | A | 0    | of the same opening
          drop                      | E | 0.03 | filled in with a ± of its own
          drop                      | F | 0.3  | changed, though filled in
          off - other.drop          | G | 0.2  | 0.1 less 0.3: of one and the same
          off + other.drop          | E | 0.15 | 0.05 of the row, and 0.1
          """)
  void an_error_comes_through_opened_rows(String formula, String row, String worst, String why) {
    WorstCase.of(HUNG.formatted(formula)).assertOff("value of " + row, worst, why);
  }

  private static final String CUT =
      """
      page p
        saw = 0.2 mm
        off = 1 mm ± 0.1 mm
        more = 3 mm
        table parts by name
          given
            name : text
            size : length
            base : row of parts = "one"
          worked out
            cut   = size + off%s
            value = %s
        rows of parts
          name    | size           | cut
          "one"   | 5 mm           |
          "two"   | 6 mm           | 8 mm
          "three" | 6 mm           | size + off ± 0.03 mm
          "four"  | 6 mm ± 0.01 mm |
      """;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          ' ± saw' | cut + 1 mm ± 0.05 mm | cut                | one   | 0.35 | 0.1, 0.2 and 0.05 of the change
          ' ± saw' | cut + 1 mm ± 0.05 mm | cut                | two   | 0    | what was measured
          ' ± saw' | cut + 1 mm ± 0.05 mm | cut                | three | 0.13 | a cell of its own: 0.1 and 0.03
          ' ± saw' | cut + 1 mm ± 0.05 mm | 2 * base.cut - cut | four  | 0.86 | 0.1, 0.6, 0.15 and 0.01
          ' ± saw' | 3 * cut - off        | cut                | one   | 0.8  | 0.3 less 0.1, and 0.6
          ' ± saw' | off + 1 mm           | cut                | one   | 0.1  | nothing of what is replaced
          ''       | cut + 1 mm           | cut                | four  | 0.11 | without a ± of its own
          ''       | 2 * cut              | 2 * base.cut - cut | three | 0.33 | 0.4 less 0.1, and 0.03
          ''       | 2 * cut              | base.cut           | four  | 0.2  | through another row
          ''       | if cut > 6.5 mm then 2 * cut else cut | cut | one | 0.1 | chosen by what it replaces
          ''       | if cut > 6.5 mm then 2 * cut else cut | cut | four | 0.22 | and chosen otherwise
          ''       | cut * (more / 1 mm)  | cut                | one   | 0.3  | by a factor that is changed
          ''       | if more > 2 mm then 9 mm else cut | cut   | one   | 0    | not chosen
          """)
  void a_change_keeps_the_errors_of_what_it_reads(
      String own, String change, String formula, String row, String worst, String why) {
    String job =
        """
        workbook "job"
        follows "standards.batten"
        change cut of parts = %s because "another saw"
        change more = more because "it stays"
        """
            .formatted(change);
    WorstCase.of(job, CUT.formatted(own, formula)).assertOff("value of " + row, worst, why);
  }

  @ParameterizedTest
  @CsvSource({
    "housing + 1 mm, 0.1",
    "housing * 2 - off, 0.1",
    "off - housing, 0",
    "off, 0.1",
    "bare + housing, 0.1",
  })
  void a_changed_line_keeps_them_too(String change, String worst) {
    String job =
        """
        workbook "job"
        follows "standards.batten"
        change housing = %s because "another lot"
        change bare = 4 mm because "it is given here"
        """
            .formatted(change);
    String standards =
        """
        page p
          off     = 1 mm ± 0.1 mm
          housing = 4 mm + off
          bare : length
          value = 9 mm + housing
        """;
    WorstCase.of(job, standards).assertOff("value", worst, change);
  }

  /** 1 mm a row; of each row of the same table only what does not come from the row above. */
  @Test
  void an_error_that_comes_from_the_row_above_is_not_told() {
    Filled filled =
        WrittenJob.filled(
            """
            page p
              table parts by name
                given
                  name : text
                  size : length
                worked out
                  left = if first row then 0 mm else above.left + above.size
              rows of parts
                name  | size
                "one" | 1 mm ± 0.1 mm
                "two" | 2 mm
            """);
    assertThat(filled.errors("left of one").worst()).isNotNull();
    assertThat(filled.errors("left of two").open())
        .allSatisfy(
            open -> assertThat(open).contains("a value that reads another row of its table"));
  }

  /** The second one is doubled 13 times: 8192 ways, none of which is taken. */
  @Test
  void no_part_of_too_many_ways_is_told() {
    StringBuilder job = new StringBuilder("workbook \"w\"\npage p\n  off = 1 mm ± 0.1 mm\n");
    job.append("  x0 = off\n");
    IntStream.range(0, 13).forEach(i -> job.append("  x%d = x%d + x%d\n".formatted(i + 1, i, i)));
    job.append("  value = (if 1 mm > 2 mm then x13 else 3 mm) + off\n");
    Filled filled = TextLoader.of(job.toString()).open().fill();
    assertThat(filled.errors("value").worst()).isNull();
    assertThat(filled.errors("value").open())
        .singleElement()
        .asString()
        .contains("more than 5000 paths into");
    assertThat(requireNonNull(filled.errors("x10").worst()).number().times(Rational.parse("25.4")))
        .isEqualTo(Rational.parse("102.4"));
  }

  /** A way of an error is told with all conditions before it: 18 000 for 190 ways. */
  @Test
  void what_takes_too_long_a_formula_is_told_and_refused() {
    String conditions =
        IntStream.range(0, 190)
            .mapToObj(i -> "if %d > k then off else ".formatted(i))
            .collect(Collectors.joining());
    String job = "page p\n  k = 5\n  off = 1 mm ± 0.1 mm\n  value = " + conditions + "2 * off\n";
    assertThat(WrittenJob.filled(job).errors("value").worst()).isNotNull();
    assertThat(WrittenJob.codes(job + "  fits = value < 3 mm even at worst\n"))
        .containsExactly("no-way-for-tolerance");
  }
}
