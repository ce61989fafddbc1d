package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.battenbook.workbook.WrittenJob.codes;
import static org.battenbook.workbook.WrittenJob.column;
import static org.battenbook.workbook.WrittenJob.filled;
import static org.battenbook.workbook.WrittenJob.names;
import static org.battenbook.workbook.WrittenJob.shown;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.IntStream;
import org.battenbook.book.Column;
import org.battenbook.book.Table;
import org.battenbook.derive.Derivation;
import org.battenbook.source.Diagnostic;
import org.battenbook.unit.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables whose rows are opened from another table's: {@code for each … of …, … to …}. */
class OpenedRowsTest {
  private static final String JOB =
      """
      page pieces
        table pieces by title
          given
            title    : text
            width    : length
            quantity : count = 1
          worked out
            hung = if width > least width then quantity else 0
        lines
          least width = 4 in
          places = count of places
        rows of pieces
          title   | width | quantity
          "Tide"  | 11 in |
          "Ferry" | 9 in  | 3
          "Stamp" | 2 in  | 5
      page walls
        table places by place
          for each piece of pieces, number to hung
          given
            wall : text = "north"
          worked out
            left   = if first row then 0 in else above.left + above.piece.width
            screws = if wall = "north" then 2 else 1
        table screws by screw
          for each place of places, number to screws
          worked out
            at = place.left + number * 1 in
      """;

  @Test
  void a_row_opens_as_many_as_its_column_says() {
    assertThat(names(filled(JOB), "places"))
        .containsExactly("Tide", "Ferry: 1", "Ferry: 2", "Ferry: 3");
  }

  @Test
  void opened_rows_open_rows_in_turn() {
    Filled filled = filled(JOB);
    assertThat(names(filled, "screws")).hasSize(8).contains("Ferry: 3: 2", "Tide: 1");
    assertThat(shown(filled, "at of Ferry: 2: 2")).isEqualTo("22 in");
  }

  @Test
  void totals_go_over_opened_rows() {
    assertThat(shown(filled(JOB), "places")).isEqualTo("4");
  }

  /** "Ferry" is to be counted yet, so that "Ferry: 2" may come; "Tide: 2" may not. */
  @Test
  void a_row_that_a_missing_count_may_open_waits_and_others_are_refused() {
    String uncounted =
        JOB.replace("quantity : count = 1", "quantity : count")
                .replace("\"Ferry\" | 9 in  | 3", "\"Ferry\" | 9 in  |")
                .replace("\"Tide\"  | 11 in |", "\"Tide\"  | 11 in | 1")
                .replace("  lines\n", "  lines\n    second : row of places = \"%s\"\n")
            + "  rows of places\n    place | wall\n    \"%s\" | \"south\"\n";
    Filled waiting = filled(uncounted.formatted("Ferry: 2", "Ferry: 2"));
    assertThat(names(waiting, "places")).containsExactly("Tide");
    assertThat(shown(waiting, "second")).isEqualTo("needs quantity of \"Ferry\"");
    assertThat(codes(uncounted.formatted("Ferry: 2", "Tide: 2"))).containsExactly("row-not-opened");
    assertThat(codes(uncounted.formatted("Tide: 2", "Ferry: 2"))).containsExactly("no-such-row");
  }

  @Test
  void written_rows_fill_in_what_was_opened() {
    Filled filled =
        filled(
            JOB
                + """
                  rows of places
                    piece   | number | wall
                    "ferry" | 2      | "south"
                    "Tide"  |        | "east"
                  rows of places
                    place      | wall
                    "Ferry: 3" | "west"
                """);
    assertThat(column(filled, "places", "wall")).containsExactly("east", "north", "south", "west");
    assertThat(names(filled, "screws")).hasSize(5);
  }

  /** Two rows of one source table: the name of one is that of the other with a number. */
  private static final String LIKE_NUMBERED =
      """
      page p
        table pieces by title
          given
            title    : text
            quantity : count = 1
        rows of pieces
          title     | quantity
          "Tide: 1" |
          "Tide"    |
        table places by place
          for each piece of pieces, number to quantity
          given
            high : length = 1 in
          worked out
            top = high + 1 in
      """;

  @ParameterizedTest
  @CsvSource({
    "'place | high', '\"Tide: 1\" | 9 in', '9 in, 1 in'",
    "'place | high', '\"Tide\" | 9 in', '1 in, 9 in'",
    "'piece | high', '\"Tide: 1\" | 9 in', '9 in, 1 in'",
    "'piece | number | high', '\"Tide: 1\" | 1 | 9 in', '9 in, 1 in'",
    "'piece | number | high', '\"Tide\" | 1 | 9 in', '1 in, 9 in'",
    "'piece | number | high', '\"Tide\" | | 9 in', '1 in, 9 in'",
  })
  void a_number_never_takes_a_row_from_its_own_name(String heads, String row, String high) {
    Filled filled = filled(LIKE_NUMBERED + "  rows of places\n    " + heads + "\n    " + row);
    assertThat(String.join(", ", column(filled, "places", "high"))).isEqualTo(high);
  }

  @Test
  void rows_whose_names_look_alike_have_formulas_of_their_own() {
    String rows =
        """
          rows of places
            piece     | number | high
            "Tide"    | 1      | 2 in + 3 in
            "Tide: 1" |        | 3 in + 4 in
        """;
    Filled filled = filled(LIKE_NUMBERED + rows);
    assertThat(column(filled, "places", "high")).containsExactly("7 in", "5 in");
    assertThat(filled.find("high of Tide: 1").exact()).isEqualTo("7");
    assertThat(filled.find("high of places \"Tide\"").exact()).isEqualTo("5");
  }

  @ParameterizedTest
  @CsvSource({
    "'place | high', '\"Tide\" | off + 2 in'",
    "'piece | high', '\"Tide\" | off + 2 in'",
    "'piece | number | high', '\"Tide\" | 1 | off + 2 in'",
  })
  void an_error_comes_into_a_filled_in_row_by_whatever_name(String heads, String row) {
    String rows = "  rows of places\n    " + heads + "\n    " + row + "\n";
    Filled filled = filled(LIKE_NUMBERED + rows + "  lines\n  off = 1 in ± 1/8 in\n");
    Quantity worst = Objects.requireNonNull(filled.errors("top of Tide").worst());
    assertThat(worst.number()).hasToString("1/8");
  }

  @Test
  void the_number_of_a_row_that_is_not_opened_names_no_other_row() {
    String none = LIKE_NUMBERED.replace("\"Tide\"    |", "\"Tide\"    | 0");
    String row = "  rows of places\n    piece | number | high\n    \"Tide\" | 1 | 9 in\n";
    assertThat(codes(none + row)).containsExactly("row-not-opened");
  }

  @Test
  void a_change_names_an_opened_row() {
    Filled filled =
        filled(JOB + "change wall of places \"Ferry: 1\" = \"stair\" because \"it is dark there\"");
    assertThat(column(filled, "places", "wall"))
        .containsExactly("north", "stair", "north", "north");
  }

  @Test
  void formulas_and_cells_name_opened_rows() {
    Filled filled =
        filled(
            JOB
                + """
                page p
                  table hooks by hook
                    given
                      hook : text
                      under : row of places = "Ferry: 2"
                    worked out
                      after = under.left
                  rows of hooks
                    hook | under
                    "a"  |
                    "b"  | "ferry: 3"
                  lines
                    by the first = count of screws where place = "Ferry: 1"
                """);
    assertThat(column(filled, "hooks", "after")).containsExactly("20 in", "29 in");
    assertThat(shown(filled, "by the first")).isEqualTo("2");
    assertThat(codes(JOB + "page p\n x = count of screws where place = \"Ferry: 9\""))
        .containsExactly("no-such-row");
  }

  @Test
  void an_opened_cell_is_derived_from_the_statement() {
    Derivation number = filled(JOB).why("number of Ferry: 3");
    assertThat(number.how()).isEqualTo(Derivation.How.OPENED);
    assertThat(number.at().text()).isEqualTo("for each piece of pieces, number to hung");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "\"Ferry\" ; 4; row-not-opened",
        "\"Ferry\" ;  ; row-not-opened",
        "\"Stamp\" ; 1; row-not-opened",
        "\"Lamp\"  ;  ; row-not-opened",
      })
  void a_row_that_is_not_there_is_not_filled_in(String piece, String number, String code) {
    String rows =
        "  rows of places\n    piece | number | wall\n    %s | %s | \"east\"\n"
            .formatted(piece, number == null ? "" : number);
    assertThat(codes(JOB + rows)).containsExactly(code);
  }

  @Test
  void what_comes_with_an_opened_row_is_not_changed() {
    assertThat(codes(JOB + "change number of places \"Ferry: 1\" = 5 because \"test\""))
        .containsExactly("opened-cell-changed");
  }

  @Test
  void a_cell_is_filled_in_once_over_all_rows_of_a_file() {
    String rows = "  rows of places\n    place | wall\n    \"Tide\" | \"%s\"\n";
    assertThat(codes(JOB + rows.formatted("east") + rows.formatted("west")))
        .containsExactly("cell-filled-twice");
  }

  /** No table can say how many rows there are. */
  @Test
  void rows_are_not_opened_in_a_circle() {
    String circle =
        """
        page p
          table a by a
            for each one of b
          table b by b1
            for each one of a
          table c by c1
            for each one of c
        """;
    assertThat(codes(circle)).containsOnly("rows-opened-in-circle").hasSize(2);
  }

  @Test
  void a_row_is_filled_in_once() {
    String rows =
        """
          rows of places
            piece  | number | wall
            "Tide" |        | "east"
            "Tide" | 1      | "west"
        """;
    assertThat(codes(JOB + rows)).containsExactly("row-filled-twice");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "for each piece of pieces, number to hung; for each piece of peaces, number to hung;"
            + " no-such-table",
        "for each piece of pieces, number to hung; for each piece of pieces, number to hang;"
            + " no-such-column",
        "for each piece of pieces, number to hung; for each piece of pieces, number to width;"
            + " rows-not-by-count",
        "then quantity else 0; then quantity / 2 else 0; rows-not-a-count",
        "then quantity else 0; then quantity - 2 else 0; rows-not-a-count",
        "then quantity else 0; then quantity * 400000 else 0; too-many-opened-rows",
        "then quantity else 0; then quantity + places else 0; formula-circle",
      })
  void what_cannot_open_rows_is_refused(String sound, String unsound, String code) {
    assertThat(codes(JOB.replace(sound, unsound))).contains(code);
  }

  @Test
  void a_count_that_is_only_near_is_told_as_near() {
    String job =
        JOB.replace("then quantity else 0", "then quantity * sin(20 deg) / sin(20 deg) else 0");
    assertThat(TextLoader.of("workbook \"Job\"\n" + job).open().diagnostics())
        .extracting(Diagnostic::message)
        .anyMatch(
            message -> message.matches("'hung of pieces' is about [0-9.]+, not exactly, for .*"));
  }

  @Test
  void a_count_that_is_not_given_yet_opens_nothing() {
    Filled filled = filled(JOB.replace("least width = 4 in", "least width : length"));
    assertThat(names(filled, "places")).isEmpty();
  }

  /** A piece whose quantity is not filled in may stand for any number of places. */
  @Test
  void what_goes_over_rows_that_are_not_all_known_waits_for_the_missing_count() {
    Filled filled =
        filled(
            """
            page walls
              table pieces by title
                given
                  title    : text
                  quantity : count
              table places by place
                for each piece of pieces, number to quantity
                worked out
                  high = 2 in
              table hooks by hook
                for each place of places
                worked out
                  many = count of places where piece = this.place.piece
              rows of pieces
                title   | quantity
                "Heron" | 2
                "Ferry" |
                "Lamp"  | 1
              lines
                all places = count of places
                all high   = sum of high over places
                tallest    = largest of high over places where number = 1
                all hooks  = count of hooks
                first      = row of places with smallest number
                pieces     = count of pieces
            """);
    assertThat(names(filled, "places")).containsExactly("Heron: 1", "Heron: 2", "Lamp");
    for (String line : List.of("all places", "all high", "tallest", "all hooks", "first")) {
      assertThat(filled.find(line).shown().text())
          .as(line)
          .isEqualTo("needs quantity of \"Ferry\"");
    }
    assertThat(filled.find("many of Lamp").shown().text()).isEqualTo("needs quantity of \"Ferry\"");
    assertThat(filled.find("high of Lamp").exact()).isEqualTo("2");
    assertThat(filled.find("pieces").exact()).isEqualTo("3");
    Filled known = withFerries(filled, "0");
    assertThat(known.find("all places").exact()).isEqualTo("3");
    assertThat(known.find("many of Lamp").exact()).isEqualTo("1");
    assertThat(Told.differences(withFerries(known, ""), filled)).isEmpty();
  }

  private static Filled withFerries(Filled filled, String quantity) {
    Column column = (Column) filled.spot("quantity of Ferry").place();
    return Objects.requireNonNull(filled.withCell(column, 1, quantity).filled());
  }

  @Test
  void an_edit_opens_and_closes_rows() {
    Filled filled = filled(JOB);
    Table pieces = Objects.requireNonNull(filled.book().table("pieces"));
    Column quantity = Objects.requireNonNull(pieces.column("quantity"));
    int before = names(filled, "places").size();
    Filled more = Objects.requireNonNull(filled.withCell(quantity, 1, "4").filled());
    assertThat(names(more, "places")).hasSizeGreaterThan(before);
    Edit same = filled.withCell(quantity, 2, "6");
    assertThat(same.diagnostics()).isEmpty();
  }

  /** Opened rows mean what the same rows mean when they are written by hand. */
  @ParameterizedTest
  @CsvSource({"1", "2", "3", "4"})
  void opened_rows_mean_what_written_rows_mean(long seed) {
    Random random = new Random(seed);
    List<Integer> counts = IntStream.range(0, 40).mapToObj(i -> random.nextInt(4)).toList();
    assertThat(values(filled(pieces(counts, "for each piece of pieces, number to quantity", ""))))
        .as("seed %d", seed)
        .isEqualTo(values(filled(pieces(counts, "", written(counts)))));
  }

  private static String pieces(List<Integer> counts, String opening, String rows) {
    StringBuilder job =
        new StringBuilder("page p\n table pieces by title\n given\n title : text\n");
    job.append(" quantity : count\n width : length\n rows of pieces\n title | quantity | width\n");
    for (int i = 0; i < counts.size(); i++) {
      job.append(" \"P%d\" | %d | %d in\n".formatted(i, counts.get(i), i + 1));
    }
    job.append(" table places by place\n ").append(opening).append('\n');
    if (opening.isEmpty()) {
      job.append(" given\n place : text\n piece : row of pieces\n number : count\n");
    }
    job.append(
        " worked out\n left = (if first row then 0 in else above.left + above.piece.width)\n");
    job.append(" before = count of places where piece = this.piece and number < this.number\n");
    return job.append(rows).toString();
  }

  private static String written(List<Integer> counts) {
    StringBuilder rows = new StringBuilder(" rows of places\n place | piece | number\n");
    for (int i = 0; i < counts.size(); i++) {
      for (int n = 1; n <= counts.get(i); n++) {
        String name = counts.get(i) == 1 ? "P" + i : "P%d: %d".formatted(i, n);
        rows.append(" \"%s\" | \"P%d\" | %d\n".formatted(name, i, n));
      }
    }
    return rows.toString();
  }

  private static List<String> values(Filled filled) {
    List<String> values = new ArrayList<>(names(filled, "places"));
    values.addAll(column(filled, "places", "left"));
    values.addAll(column(filled, "places", "before"));
    return values;
  }

  /**
   * The formula of the opening, one that is entered for the row, and the change of another file.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          Tide     | piece.width  | write (piece.width) in the change instead of 'width'
          Ferry: 1 | 3 in * 2     | write (3 in * 2) in the change instead of 'width'
          Ferry: 2 | width + 1 in | write the new value of the cell, without 'width'
          """)
  void a_change_that_reads_a_formula_of_its_cell_is_a_fault(
      String row, String formula, String advice) {
    Filled filled =
        new TextLoader()
            .with(
                "shop.batten",
                """
                workbook "shop"
                page pieces
                  table pieces by title
                    given
                      title    : text
                      width    : length
                      quantity : count = 1
                  table places by place
                    for each piece of pieces, number to quantity
                      width = piece.width
                    given
                      width : length = 7 in
                  rows of pieces
                    title   | width | quantity
                    "Tide"  | 11 in | 1
                    "Ferry" | 9 in  | 3
                  rows of places
                    place      | width
                    "Ferry: 1" | 3 in * 2
                    "Ferry: 2" | 5 in
                change width of places "Ferry: 2" = width + 1 in because "a value can be read"
                """)
            .with(
                "job.batten",
                """
                workbook "job"
                follows "shop.batten"
                change width of places "%s" = width + 1 in because "a formula cannot"
                """
                    .formatted(row))
            .open()
            .fill();
    assertThat(filled.faults()).hasSize(1);
    assertThat(filled.find("width of places \"" + row + "\"").shown().text())
        .contains("a change cannot read the formula of its cell, '" + formula + "'")
        .endsWith("; " + advice);
    String other = row.equals("Ferry: 2") ? "Tide" : "Ferry: 2";
    assertThat(filled.find("width of places \"" + other + "\"").exact())
        .isEqualTo(other.equals("Tide") ? "11" : "6");
  }
}
