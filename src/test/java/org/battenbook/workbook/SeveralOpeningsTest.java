package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.battenbook.workbook.WrittenJob.codes;
import static org.battenbook.workbook.WrittenJob.column;
import static org.battenbook.workbook.WrittenJob.filled;
import static org.battenbook.workbook.WrittenJob.names;
import static org.battenbook.workbook.WrittenJob.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.IntStream;
import org.battenbook.book.Column;
import org.battenbook.derive.Derivation;
import org.battenbook.number.Rational;
import org.battenbook.source.Diagnostic;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A table whose rows are opened from those of several others, each with cells of its own. */
class SeveralOpeningsTest {
  private static final String JOB =
      """
      page frames
        table squares by title
          given
            title : text
            side  : length
          worked out
            rail  = side + room ± 1/32 in
        table rounds by name
          given
            name     : text
            diameter : length
            quantity : count = 2
        lines
          room = 1/4 in
        rows of squares
          title   | side
          "Tide"  | 11 in
          "Ferry" | 9 in
        rows of rounds
          name       | diameter
          "Porthole" | 8 in
      page hanging
        table hung frames by frame
          for each square of squares
            across = square.rail
            wood   = "ash"
          for each round of rounds, number to quantity
            across = round.diameter + number * 1 in     -- a rim for each
          given
            across : length
            wood   : text = "beech"
            hooks  : count = if across > 10 in then 2 else 1
          worked out
            doubled = 2 * across
          shows: frame, square, across
        table places by place
          for each frame of hung frames, number to hooks
          worked out
            at = frame.across * number
      """;

  @Test
  void rows_of_several_tables_stand_one_after_another() {
    assertThat(names(filled(JOB), "hung frames"))
        .containsExactly("Tide", "Ferry", "Porthole: 1", "Porthole: 2");
  }

  @Test
  void each_opening_says_what_its_rows_hold() {
    Filled filled = filled(JOB);
    assertThat(column(filled, "hung frames", "across"))
        .containsExactly("11 1/4 in", "9 1/4 in", "9 in", "10 in");
    assertThat(column(filled, "hung frames", "wood"))
        .containsExactly("ash", "ash", "beech", "beech");
    assertThat(column(filled, "hung frames", "doubled"))
        .containsExactly("22 1/2 in", "18 1/2 in", "18 in", "20 in");
  }

  @Test
  void its_rows_open_rows_in_turn() {
    assertThat(names(filled(JOB), "places"))
        .containsExactly("Tide: 1", "Tide: 2", "Ferry", "Porthole: 1", "Porthole: 2");
  }

  @Test
  void a_written_cell_wins_over_that_of_the_opening() {
    Filled filled =
        filled(
            JOB
                + """
                  rows of hung frames
                    frame | across
                    "ferry" | 12 in
                  rows of hung frames
                    round      | number | wood
                    "Porthole" | 2      | "oak"
                change across of hung frames "Tide" = 7 in because "it was cut down"
                """);
    assertThat(column(filled, "hung frames", "across"))
        .containsExactly("7 in", "12 in", "9 in", "10 in");
    assertThat(column(filled, "hung frames", "wood")).containsExactly("ash", "ash", "beech", "oak");
    assertThat(names(filled, "places")).contains("Ferry: 2").doesNotContain("Tide: 2");
  }

  @Test
  void cells_of_the_same_words_win_over_that_of_the_opening_alike() {
    Filled filled =
        filled(
            JOB
                + """
                  rows of hung frames
                    frame         | across
                    "Porthole: 1" | 12 in
                    "Porthole: 2" | 12 in
                """);
    assertThat(column(filled, "hung frames", "across"))
        .containsExactly("11 1/4 in", "9 1/4 in", "12 in", "12 in");
  }

  @Test
  void an_opened_cell_tells_its_formula_and_where_it_stands() {
    Derivation across = filled(JOB).why("across of Porthole: 2");
    assertThat(across.formula()).isEqualTo("round.diameter + number * 1 in");
    assertThat(across.at().text()).startsWith("round.diameter");
    assertThat(across.from())
        .extracting(Derivation::place)
        .contains("diameter of \"Porthole\"", "number of \"Porthole: 2\"");
  }

  @Test
  void an_error_goes_through_an_opened_cell() {
    Filled filled = filled(JOB);
    assertThat(Objects.requireNonNull(filled.errors("doubled of Tide").worst()).number())
        .isEqualTo(Rational.of(1, 16));
    assertThat(filled.errors("doubled of Porthole: 1").sources()).isEmpty();
  }

  @Test
  void a_row_of_another_table_leaves_the_cell_empty() {
    Filled filled = filled(JOB);
    assertThat(filled.faults()).isEmpty();
    Column square = Objects.requireNonNull(table(filled, "hung frames").column("square"));
    assertThat(IntStream.range(0, 4).mapToObj(row -> filled.value(square, row).staysEmpty()))
        .containsExactly(false, false, true, true);
  }

  @Test
  void an_edit_of_the_other_table_is_felt() {
    Filled filled = filled(JOB);
    Column side = Objects.requireNonNull(table(filled, "squares").column("side"));
    Filled edited = Objects.requireNonNull(filled.withCell(side, 1, "9.5 in").filled());
    assertThat(column(edited, "hung frames", "doubled")).contains("19 1/2 in");
  }

  @Test
  void two_rows_of_one_name_are_told_where_they_are_written() {
    String job = JOB.replace("\"Porthole\" | 8 in", "\"Porthole\" | 8 in\n \"Ferry\" | 7 in");
    String twice =
        job.replace("for each round of rounds, number to quantity", "for each round of rounds")
            .replace("number * 1 in", "1 in");
    List<Diagnostic> told = WrittenJob.read(twice).diagnostics();
    assertThat(told).extracting(Diagnostic::code).contains("duplicate-row");
    assertThat(told.get(0).span().text()).isEqualTo("\"Ferry\"");
    assertThat(told.get(0).span().line()).isGreaterThan(19);
    assertThat(told.get(0).message()).endsWith("at job.batten:19");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "across = square.rail; acros = square.rail; no-such-column",
        "across = square.rail; across = square.rails; no-such-column",
        "across = square.rail; across = 3 lb; kind-mismatch",
        "across = square.rail; across : length; cell-of-opening-without-formula",
        "across = square.rail; across : length = 3 in; cell-of-opening-without-formula",
        "across = square.rail; doubled = square.rail; cell-not-for-opening",
        "across = square.rail; square = square.rail; cell-not-for-opening",
        "across = square.rail; frame = square.title; cell-not-for-opening",
        "wood   = \"ash\"; across = 3 in; cell-not-for-opening",
        "for each square of squares; for each square of; for-each-form",
        "for each square of squares; for each square of squares,; for-each-form",
      })
  void what_an_opening_cannot_say_is_refused(String sound, String unsound, String code) {
    assertThat(JOB).contains(sound);
    assertThat(codes(JOB.replace(sound, unsound))).contains(code);
  }

  @Test
  void an_opening_stands_above_the_columns() {
    String late = JOB.replace("    shows: frame", "    for each hook of squares\n    shows: frame");
    assertThat(codes(late)).contains("for-each-out-of-place");
  }

  @Test
  void a_formula_over_several_lines_is_told_in_one() {
    String job =
        JOB.replace(
            "doubled = 2 * across", "doubled = if across > 1 in\n then 2 * across\n else 0 in");
    Derivation doubled = filled(job).why("doubled of Ferry");
    assertThat(doubled.formula()).isEqualTo("if across > 1 in then 2 * across else 0 in");
    assertThat(doubled.withValues()).isEqualTo("if 9 1/4 in > 1 in then 2 * 9 1/4 in else 0 in");
  }

  @Test
  void a_cell_that_was_taken_from_another_table_is_found_there() {
    String job =
        JOB.replace("across = square.rail", "across = square.rail\n side = square.side")
            .replace("across = round.diameter", "side = round.diameter\n across = round.diameter")
            .replace("across : length", "across : length\n side : length");
    Filled filled = filled(job);
    assertThat(filled.find("side of Ferry").spot().place().words()).isEqualTo("side of squares");
    assertThat(filled.find("side of hung frames \"Ferry\"").spot().place().words())
        .isEqualTo("side of hung frames");
    assertThat(filled.find("side of Porthole: 1").spot().place().words())
        .isEqualTo("side of hung frames");
  }

  /** Cells of an opening mean what formulas mean that are written into each row. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void cells_of_an_opening_mean_what_written_formulas_mean(long seed) {
    Random random = new Random(seed);
    StringBuilder pieces = new StringBuilder();
    StringBuilder rows = new StringBuilder("  rows of hung\n    hung | piece | across | wood\n");
    for (int i = 0; i < 60; i++) {
      pieces.append("    \"P%d\" | %d/8 in\n".formatted(i, 1 + random.nextInt(400)));
      rows.append("    \"P%d\" | \"P%d\" | (piece.width * 3 + room) | \"ash\"\n".formatted(i, i));
    }
    assertThat(
            hung(
                pieces,
                "for each piece of pieces\n across = piece.width * 3 + room\n wood = \"ash\"",
                ""))
        .as("seed %d", seed)
        .isEqualTo(hung(pieces, "given\n hung : text\n piece : row of pieces", rows.toString()));
  }

  private static List<String> hung(CharSequence pieces, String opening, String rows) {
    String job =
        """
        page p
          table pieces by title
            given
              title : text
              width : length
          rows of pieces
            title | width
        %s
          table hung by hung
            %s
            given
              across : length
              wood   : text
            worked out
              half = across / 2
          lines
            room = 1/16 in
            all  = sum of half over hung where wood = "ash"
        %s
        """
            .formatted(pieces, opening, rows);
    Filled filled = filled(job);
    List<String> values = new ArrayList<>(column(filled, "hung", "half"));
    values.add(filled.find("all").exact());
    return values;
  }
}
