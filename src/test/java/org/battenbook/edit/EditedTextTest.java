package org.battenbook.edit;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import org.battenbook.book.Column;
import org.battenbook.book.Line;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.source.Diagnostic;
import org.battenbook.workbook.Edit;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.TextLoader;
import org.junit.jupiter.api.Test;

/** What edits write into the texts of a job, and that they leave all else as it is. */
class EditedTextTest {
  private static final String SHOP =
      """
      workbook "Shop"
      page allowances
        play = 1/8 in shown as 1/32 in -- both sides together
        step = 1/16 in
        wall : length -- the job says it
      page pieces
        table pieces by title
          given
            title    : text
            width    : length
            quantity : count = 1
            border   : length = 2 in
          worked out
            rail = width + play
        table places by place
          for each piece of pieces, number to quantity
          given
            high : length = 60 in
        lines
          all = sum of rail over pieces
      """;

  private static final String JOB =
      """
      workbook "Job" -- with a note
      follows "shop.batten"

      page pieces
        rows of pieces
          title        | width | quantity -- as hung
          "Tide chart" | 9 in  | 2
          "Heron"      | 12 in |          -- in ink
          "Ferry"      | 8 in  | 1
      """;

  private static Filled filled(String job) {
    return new TextLoader().with("shop.batten", SHOP).with("job.batten", job).open().fill();
  }

  private static Table table(Filled filled, String name) {
    return requireNonNull(filled.book().table(name));
  }

  private static Column column(Filled filled, String table, String column) {
    return requireNonNull(table(filled, table).column(column));
  }

  private static Place place(Filled filled, String name) {
    return filled.spot(name).place();
  }

  /** The changed texts by the names of their files. */
  private static Map<String, String> texts(Edit edit) {
    assertThat(edit.diagnostics()).isEmpty();
    Map<String, String> texts = new LinkedHashMap<>();
    edit.texts().forEach((source, text) -> texts.put(source.name(), text));
    return texts;
  }

  private static String job(Function<Filled, WorkbookEdit> edit) {
    return job(JOB, edit);
  }

  private static String job(String job, Function<Filled, WorkbookEdit> edit) {
    Filled filled = filled(job);
    Map<String, String> texts = texts(filled.edit(edit.apply(filled)));
    assertThat(texts).containsOnlyKeys("job.batten");
    return requireNonNull(texts.get("job.batten"));
  }

  private static String shop(Function<Filled, WorkbookEdit> edit) {
    Filled filled = filled(JOB);
    Map<String, String> texts = texts(filled.edit(edit.apply(filled)));
    assertThat(texts).containsOnlyKeys("shop.batten");
    return requireNonNull(texts.get("shop.batten"));
  }

  @Test
  void a_formula_is_replaced_in_the_file_that_has_it() {
    assertThat(shop(job -> new FormulaEdit(place(job, "play"), " 3/16 in ")))
        .isEqualTo(SHOP.replace("play = 1/8 in shown", "play = 3/16 in shown"));
    assertThat(shop(job -> new FormulaEdit(place(job, "play"), "3/16 in shown as mm")))
        .isEqualTo(SHOP.replace("1/8 in shown as 1/32 in", "3/16 in shown as mm"));
    assertThat(shop(job -> new FormulaEdit(column(job, "pieces", "border"), "width / 4")))
        .isEqualTo(SHOP.replace("border   : length = 2 in", "border   : length = width / 4"));
  }

  @Test
  void a_given_line_is_filled_in_by_the_job() {
    assertThat(job(job -> new FormulaEdit(place(job, "wall"), "10 ft")))
        .isEqualTo(JOB + "\npage allowances\n  wall = 10 ft\n");
  }

  @Test
  void a_cell_is_replaced_and_bars_stay_below_one_another() {
    assertThat(job(job -> new CellEdit(column(job, "pieces", "width"), 0, "9 1/2 in")))
        .isEqualTo(JOB.replace("| 9 in  | 2", "| 9 1/2 in | 2"));
    assertThat(job(job -> new CellEdit(column(job, "pieces", "width"), 1, "9 in")))
        .isEqualTo(JOB.replace("| 12 in |", "| 9 in  |"));
    assertThat(job(job -> new CellEdit(column(job, "pieces", "quantity"), 1, "3")))
        .isEqualTo(JOB.replace("12 in |          --", "12 in | 3        --"));
    assertThat(job(job -> new CellEdit(column(job, "pieces", "quantity"), 0, "")))
        .isEqualTo(JOB.replace("| 9 in  | 2", "| 9 in  | "));
    assertThat(job(job -> new CellEdit(column(job, "pieces", "quantity"), 1, "(1 + 2)")))
        .isEqualTo(JOB.replace("12 in |          --", "12 in | (1 + 2)  --"));
  }

  @Test
  void a_longer_cell_takes_the_padding_of_the_cells_behind_it() {
    String wide =
        JOB.replace("title        | width | quantity", "title        | width | border  | quantity")
            .replace("| 9 in  | 2", "| 9 in  | 3 in    | 2")
            .replace("| 12 in |          --", "| 12 in |         |          --")
            .replace("| 8 in  | 1", "| 8 in  |         | 1");
    assertThat(job(wide, job -> new CellEdit(column(job, "pieces", "width"), 0, "9 1/2 in")))
        .isEqualTo(wide.replace("| 9 in  | 3 in    | 2", "| 9 1/2 in | 3 in | 2"));
  }

  @Test
  void a_column_without_a_heading_is_given_one() {
    assertThat(job(job -> new CellEdit(column(job, "pieces", "rail"), 0, "9 in")))
        .isEqualTo(
            JOB.replace("quantity -- as", "quantity | rail -- as")
                .replace("| 2\n", "| 2 | 9 in\n")
                .replace("12 in |          --", "12 in | |          --")
                .replace("8 in  | 1\n", "8 in  | 1 |\n"));
  }

  @Test
  void an_opened_row_is_filled_in() {
    String once = job(job -> new CellEdit(column(job, "places", "high"), 1, "58 in"));
    String block =
        """

        page pieces
          rows of places
            piece        | number | high
            "Tide chart" | 2      | 58 in
        """;
    assertThat(once).isEqualTo(JOB + block);
    assertThat(job(once, job -> new CellEdit(column(job, "places", "high"), 1, "57 in")))
        .isEqualTo(once.replace("58 in", "57 in"));
    assertThat(job(once, job -> new CellEdit(column(job, "places", "high"), 3, "50 in")))
        .isEqualTo(once + "    \"Ferry\"      | 1      | 50 in\n");
  }

  @Test
  void rows_are_added_copied_moved_and_removed() {
    assertThat(
            job(
                job ->
                    new RowAddition(
                        table(job, "pieces"),
                        Map.of(
                            column(job, "pieces", "width"), "1 ft",
                            column(job, "pieces", "title"), "\"Lamp\""))))
        .isEqualTo(JOB + "    \"Lamp\"       | 1 ft  |\n");
    assertThat(
            job(
                job ->
                    new RowCopy(
                        table(job, "pieces"),
                        0,
                        Map.of(column(job, "pieces", "title"), "\"Tide chart, south\""))))
        .isEqualTo(
            JOB.replace("| 9 in  | 2\n", "| 9 in  | 2\n    \"Tide chart, south\" | 9 in  | 2\n"));
    assertThat(job(job -> new RowMove(table(job, "pieces"), 1, 0)))
        .isEqualTo(
            JOB.replace("    \"Heron\"      | 12 in |          -- in ink\n", "")
                .replace(
                    "    \"Tide", "    \"Heron\"      | 12 in |          -- in ink\n    \"Tide"));
    assertThat(job(job -> new RowMove(table(job, "pieces"), 0, 3)))
        .isEqualTo(
            JOB.replace("    \"Tide chart\" | 9 in  | 2\n", "")
                + "    \"Tide chart\" | 9 in  | 2\n");
    assertThat(job(job -> new RowRemoval(table(job, "pieces"), 2)))
        .isEqualTo(JOB.replace("    \"Ferry\"      | 8 in  | 1\n", ""));
  }

  @Test
  void a_change_is_written_below_the_head_and_then_kept_there() {
    String once =
        job(
            job ->
                new ChangeEdit(place(job, "play"), -1, "play + 1/16 in", "the \"panels\" swell"));
    assertThat(once)
        .isEqualTo(
            JOB.replace(
                "follows \"shop.batten\"\n",
                """
                follows "shop.batten"
                change play = play + 1/16 in because "the ""panels"" swell"
                """));
    assertThat(job(once, job -> new ChangeEdit(place(job, "play"), -1, "play + 1/8 in", null)))
        .isEqualTo(once.replace("play + 1/16 in", "play + 1/8 in"));
    assertThat(job(once, job -> new FormulaEdit(place(job, "play"), "1/4 in")))
        .isEqualTo(once.replace("play + 1/16 in", "1/4 in"));
    assertThat(
            job(
                once,
                job -> new ChangeEdit(column(job, "pieces", "border"), 1, "3 in", "hangs high")))
        .isEqualTo(
            once.replace(
                "swell\"\n",
                "swell\"\nchange border of pieces \"Heron\" = 3 in because \"hangs high\"\n"));
    Filled filled = filled(once);
    assertThat(texts(filled.edit(new ChangeRemoval(place(filled, "play"), -1))))
        .isEqualTo(Map.of("job.batten", JOB));
  }

  @Test
  void a_line_is_added_and_removed() {
    String once =
        job(job -> new LineAddition(place(job, "all").page(), "twice = 2 * all -- for two walls"));
    assertThat(once)
        .isEqualTo(
            JOB.replace("page pieces\n", "page pieces\n  twice = 2 * all -- for two walls\n"));
    Filled filled = filled(once);
    assertThat(texts(filled.edit(new LineRemoval((Line) place(filled, "twice")))))
        .isEqualTo(Map.of("job.batten", JOB));
  }

  @Test
  void line_breaks_and_a_last_line_without_one_stay() {
    String dos = JOB.strip().replace("\n", "\r\n");
    assertThat(
            job(
                dos,
                job ->
                    new RowAddition(
                        table(job, "pieces"),
                        Map.of(
                            column(job, "pieces", "title"), "\"Lamp\"",
                            column(job, "pieces", "width"), "1 ft"))))
        .isEqualTo(dos + "\r\n    \"Lamp\"       | 1 ft  |");
    assertThat(job(dos, job -> new RowRemoval(table(job, "pieces"), 2)))
        .isEqualTo(dos.substring(0, dos.lastIndexOf("\r\n")));
  }

  @Test
  void several_edits_come_together_in_the_texts() {
    Filled filled = filled(JOB);
    filled = requireNonNull(filled.withFormula(place(filled, "step"), "1/8 in").filled());
    filled =
        requireNonNull(filled.withCell(column(filled, "pieces", "width"), 0, "10 in").filled());
    filled =
        requireNonNull(filled.withCell(column(filled, "pieces", "width"), 0, "11 in").filled());
    Edit last = filled.edit(new RowRemoval(table(filled, "pieces"), 2));
    assertThat(texts(last))
        .isEqualTo(
            Map.of(
                "shop.batten",
                SHOP.replace("step = 1/16 in", "step = 1/8 in"),
                "job.batten",
                JOB.replace("| 9 in  |", "| 11 in |")
                    .replace("    \"Ferry\"      | 8 in  | 1\n", "")));
  }

  @Test
  void there_and_back_leaves_no_text_to_keep() {
    Filled filled = filled(JOB);
    filled = requireNonNull(filled.withFormula(place(filled, "play"), "1 in").filled());
    assertThat(texts(filled.withFormula(place(filled, "play"), "1/8 in"))).isEmpty();
  }

  @Test
  void a_row_that_something_names_stays() {
    String job = JOB + "  lines\n    first = row of pieces where title = \"Heron\"\n";
    job = job + "    long = \"Heron\" = first\n";
    Filled filled = filled(job);
    Edit edit = filled.edit(new RowRemoval(table(filled, "pieces"), 1));
    assertThat(edit.filled()).isNull();
    assertThat(edit.texts()).isEmpty();
    assertThat(edit.diagnostics())
        .extracting(Diagnostic::message)
        .startsWith(
            "removing the row \"Heron\" of 'pieces' leaves an error at job.batten:11: "
                + "no row of 'pieces' is called \"Heron\"");
  }

  @Test
  void what_no_text_can_say_is_refused() {
    Filled filled = filled(JOB);
    assertThat(refusal(filled.withCell(column(filled, "places", "number"), 0, "3")))
        .isEqualTo("'number' is set with the rows of 'places'");
    assertThat(refusal(filled.edit(new RowRemoval(table(filled, "places"), 0))))
        .isEqualTo("the row \"Tide chart: 1\" of 'places' comes from 'pieces'");
    assertThat(refusal(filled.edit(new ChangeEdit(place(filled, "play"), -1, "1 in", null))))
        .isEqualTo("the change of 'play' needs a reason");
    assertThat(refusal(filled.withFormula(place(filled, "play"), "1 in -- more")))
        .startsWith("there is a note after this");
    assertThat(refusal(filled.withFormula(place(filled, "play"), "1 in\n+ 2 in")))
        .isEqualTo("this is more than one line");
    assertThat(refusal(filled.withCell(column(filled, "pieces", "width"), 0, "1 in | 2")))
        .isEqualTo("this is one cell, but it has a bar");
  }

  private static String refusal(Edit edit) {
    assertThat(edit.filled()).isNull();
    return edit.diagnostics().get(0).message();
  }
}
