package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.battenbook.number.Rational;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the cut list says of small jobs, calculated again from the job's own numbers. */
class CutListTest {
  private static final String STICKS =
      """
      workbook "Sticks"
      currency USD
      page cutting
        saw kerf = 1/8 in
        table parts by part
          given
            part   : text
            wood   : text = "ash"
            long   : length
            needed : count
            run    : length = 0 in
            frame  : text = ""
            frames : count = 1
          worked out
            along  = saw kerf
        table stock by stick
          given
            stick  : text
            wood   : text = "ash"
            length : length
            price  : money = 0 USD
            rack   : count = 0
            any    : yes or no = true
            old    : yes or no = false
            begins : length = 0 in
        stick plan rail
          stop tolerance = 1/32 in
          parts of parts
            length      = long
            quantity    = needed
            material    = wood
            kerf        = along
            nests by    = run
            matched set = frame
            sets        = frames
          stock of stock
            length       = length
            material     = wood
            price        = price
            on hand      = rack
            can buy more = any
            offcut       = old
            starts at    = begins
      """;

  private static final String SHEETS =
      """
      workbook "Sheets"
      currency USD
      page cutting
        rounds = 0
        table panes by pane
          given
            pane   : text
            wide   : length
            high   : length
            needed : count = 1
            turns  : yes or no = true
        table stock by sheet
          given
            sheet  : text
            wide   : length
            high   : length
            price  : money = 0 USD
            blade  : length = 0 in
        sheet plan glazing
          stages = rounds
          parts of panes
            width      = wide
            height     = high
            quantity   = needed
            can rotate = turns
          stock of stock
            width  = wide
            height = high
            price  = price
            kerf   = blade
      """;

  @TempDir Path folder;

  // A pane 38 in wide lies on a sheet 20 in wide only rotated; both do not lie on one sheet.
  @Test
  void rotated_pieces_say_so_on_their_own_sheet_alone() throws IOException {
    String job =
        job(
            SHEETS,
            """
            rows of panes
              pane     | wide  | high
              "long"   | 38 in | 18 in
              "square" | 17 in | 17 in
            rows of stock
              sheet   | wide  | high
              "large" | 20 in | 40 in
            """);
    List<String> headings =
        told(0, job)
            .lines()
            .map(String::strip)
            .filter(line -> line.startsWith("placement "))
            .toList();
    assertThat(headings).hasSize(2);
    assertThat(headings.stream().filter(line -> line.endsWith("label  rotated"))).hasSize(1);
    assertThat(headings.stream().filter(line -> line.endsWith("label"))).hasSize(1);
    for (JsonNode sheet : list(json(0, job), "/plans/0/materials/0/taken")) {
      JsonNode piece = sheet.at("/pieces/0/values");
      boolean isLong = piece.at("/label/exact").asText().equals("long");
      assertThat(piece.at("/rotated/exact").asText()).isEqualTo(isLong ? "yes" : "no");
      assertThat(number(piece, "width")).isEqualTo(Rational.of(isLong ? 18 : 17));
      assertThat(number(piece, "height")).isEqualTo(Rational.of(isLong ? 38 : 17));
    }
  }

  // Five panes of a half large sheet: two large ones and a small one, 2 × 30 + 16 USD, where three
  // large ones are 90 USD and five small ones 80 USD.
  @Test
  void several_sizes_go_together_where_that_is_cheapest_and_have_a_total_price()
      throws IOException {
    String job =
        job(
            SHEETS,
            """
            rows of panes
              pane | wide  | high  | needed
              "a"  | 20 in | 40 in | 5
            rows of stock
              sheet   | wide  | high  | price
              "large" | 40 in | 40 in | 30 USD
              "small" | 20 in | 40 in | 16 USD
            """);
    assertThat(told(0, job))
        .contains("· 2 of large, 40 in x 40 in: 60.00 USD\n")
        .contains("· 1 of small, 20 in x 40 in: 16.00 USD\n")
        .contains("· total: 76.00 USD\n");
    JsonNode plan = json(0, job).at("/plans/0");
    assertThat(exact(plan, "/materials/0/used/exact")).isEqualTo(Rational.of(76));
    assertThat(exact(plan, "/materials/0/bound/exact")).isEqualTo(Rational.of(76));
    assertThat(plan.at("/stock/0/price/shown").asText()).isEqualTo("60.00 USD");
  }

  @Test
  void one_price_is_no_sum() throws IOException {
    String job =
        job(
            STICKS,
            """
            rows of parts
              part | wood  | long  | needed
              "a"  | "ash" | 40 in | 6
              "b"  | "oak" | 40 in | 1
            rows of stock
              stick  | wood  | length | price
              "ash"  | "ash" | 96 in  | 7.25 USD
              "oak"  | "oak" | 96 in  |
            """);
    assertThat(told(0, job))
        .contains("· 3 of ash, 96 in: 21.75 USD\n", "· 1 of oak, 96 in\n")
        .doesNotContain("total");
    String priced = job.replace("job", "priced");
    Files.writeString(
        Path.of(priced),
        Files.readString(Path.of(job))
            + """
                "elm"  | "elm" | 96 in  | 2 USD
              rows of parts
                part | wood  | long  | needed
                "c"  | "elm" | 40 in | 1
              """);
    assertThat(told(0, priced)).contains("· total of what has a price: 23.75 USD\n");
  }

  // Ash costs something, though not the piece that was left over; nothing of oak has a price.
  @Test
  void what_is_used_is_told_as_what_the_plan_keeps_small() throws IOException {
    String job =
        job(
            STICKS,
            """
            rows of parts
              part | wood  | long  | needed
              "a"  | "ash" | 20 in | 2
              "b"  | "oak" | 40 in | 3
            rows of stock
              stick      | wood  | length | price  | rack | any   | old
              "leftover" | "ash" | 50 in  |        | 1    | false | true
              "ash 8 ft" | "ash" | 96 in  | 20 USD |      |       |
              "oak 8 ft" | "oak" | 96 in  |        |      |       |
            """);
    JsonNode plan = json(0, job).at("/plans/0");
    assertThat(plan.at("/materials/0/material").asText()).isEqualTo("ash");
    for (String measure : List.of("used", "bound")) {
      JsonNode ofAsh = plan.at("/materials/0/" + measure);
      assertThat(exact(ofAsh, "/exact")).isEqualTo(Rational.ZERO);
      assertThat(ofAsh.at("/unit").asText()).isEqualTo("USD");
      JsonNode ofOak = plan.at("/materials/1/" + measure);
      assertThat(exact(ofOak, "/exact")).isEqualTo(Rational.of(2 * 96));
      assertThat(ofOak.at("/unit").asText()).isEqualTo("in");
    }
    assertThat(told(0, job))
        .contains("From stock\n  · 1 of leftover, 50 in\n")
        .contains("To buy\n  · 2 of oak 8 ft, 96 in\n\n");
  }

  // A frame takes 60 3/8 in of 96 in, so each a stick of its own; without the frames, half of the
  // rails are 90 5/8 in.
  @Test
  void a_matched_frame_has_a_stick_of_its_own_with_its_rails_in_turn() throws IOException {
    String rows =
        """
        rows of parts
          part   | long  | needed | frame   | frames
          "top"  | 20 in | 6      | "chart" | 3
          "side" | 10 in | 6      | "chart" | 3
        rows of stock
          stick  | length
          "8 ft" | 96 in
        """;
    String job = job(STICKS, rows);
    List<JsonNode> sticks = taken(job);
    assertThat(sticks).hasSize(3);
    for (JsonNode stick : sticks) {
      assertThat(labels(stick)).containsExactly("top", "side", "top", "side");
      assertThat(marks(stick)).containsExactly("0-20", "161/8-241/8", "121/4-201/4", "403/8-483/8");
    }
    assertThat(told(0, job))
        .contains("rail: ash: 3 sticks, proven")
        .contains("  ash: 1; ash: 2; ash: 3 (3 alike), from 8 ft\n");
    assertThat(taken(job(STICKS, rows.replace("\"chart\"", "\"\"")))).hasSize(2);
  }

  // 4 × 20 in and 3 kerfs, less 3 × 2 in by which neighbors run into each other: 74 3/8 in.
  @Test
  void rails_that_are_flipped_end_for_end_share_their_miters_and_a_kerf() throws IOException {
    String rows =
        """
        rows of parts
          part  | long  | needed | run
          "top" | 20 in | 4      | 2 in
        rows of stock
          stick  | length
          "long" | 75 in
        """;
    String job = job(STICKS, rows);
    List<JsonNode> sticks = taken(job);
    assertThat(sticks).hasSize(1);
    assertThat(marks(sticks.get(0)))
        .containsExactly("0-20", "145/8-305/8", "145/4-225/4", "435/8-595/8");
    assertThat(list(sticks.get(0), "/cuts"))
        .extracting(cut -> cut.at("/values/flipped/exact").asText())
        .containsExactly("no", "yes", "no", "yes");
    assertThat(exact(sticks.get(0), "/values/offcut/exact")).isEqualTo(Rational.of(1, 2));
    assertThat(told(0, job)).contains("label  flipped\n");
    String straight = job(STICKS, rows.replace("2 in", "0 in"));
    assertThat(taken(straight)).hasSize(2);
    assertThat(told(0, straight)).doesNotContain("flipped");
  }

  // All four and three kerfs are 40 15/32 in, just what there is; at the stop of the longest, two
  // of
  // them come out longer by 3/64 in together.
  @Test
  void merged_stops_are_fewer_and_may_take_more_sticks() throws IOException {
    String job =
        job(
            STICKS,
            """
            rows of parts
              part | long       | needed
              "a"  | 10 in      | 1
              "b"  | 10 1/64 in | 1
              "c"  | 10 1/32 in | 1
              "d"  | 10 3/64 in | 1
            rows of stock
              stick   | length
              "exact" | 40 15/32 in
            """);
    assertThat(taken(job)).hasSize(1);
    assertThat(taken(job, "--merge-stops")).hasSize(2);
    assertThat(told(0, job, "--merge-stops"))
        .contains(
            "with merged stops: 2 instead of 4; see 'longer by' for the 2 cuts that are longer");
    JsonNode merged = json(0, job, "--merge-stops").at("/plans/0/materials/0");
    assertThat(list(merged, "/stops"))
        .extracting(stop -> stop.at("/values/length/exact").asText())
        .containsExactly("643/64", "10");
    for (JsonNode stick : list(merged, "/taken")) {
      for (JsonNode cut : list(stick, "/cuts")) {
        JsonNode values = cut.get("values");
        boolean alone = values.at("/label/exact").asText().equals("a");
        assertThat(number(values, "length"))
            .isEqualTo(alone ? Rational.of(10) : Rational.of(643, 64));
        assertThat(number(values, "longer by")).isBetween(Rational.ZERO, Rational.of(1, 32));
      }
    }
  }

  // A knot from 30 to 32 in: the clear lengths are shorter together than the new stick.
  @Test
  void marks_keep_clear_of_a_defect_and_are_measured_from_the_end_of_the_stick()
      throws IOException {
    String job =
        job(
            STICKS,
            """
            rows of parts
              part | long  | needed
              "a"  | 29 in | 3
            rows of stock
              stick       | length | begins | rack | any
              "knotty: 1" | 30 in  | 0 in   | 1    | false
              "knotty: 2" | 64 in  | 32 in  | 1    | false
              "new"       | 96 in  | 0 in   |      |
            """);
    List<String> marks = new ArrayList<>();
    taken(job).forEach(stick -> marks.addAll(marks(stick)));
    assertThat(marks).containsExactlyInAnyOrder("0-29", "32-61", "489/8-721/8");
  }

  @Test
  void offcuts_go_first_and_what_they_are_too_few_for_is_bought() throws IOException {
    String job =
        job(
            STICKS,
            """
            rows of parts
              part | long  | needed
              "a"  | 40 in | 5
            rows of stock
              stick  | length | price | rack | any   | old
              "left" | 45 in  | 1 USD | 2    | false | true
              "8 ft" | 96 in  | 9 USD |      |       |
            """);
    JsonNode plan = json(0, job).at("/plans/0");
    assertThat(exact(plan, "/materials/0/used/exact")).isEqualTo(Rational.of(2 * 9));
    assertThat(told(0, job))
        .contains("To buy\n  · 2 of 8 ft, 96 in: 18.00 USD\n\n")
        .contains("From stock\n  · 2 of left, 45 in\n");
  }

  // Columns of 12 and 8 in, of the second 12 in down, of what is left two halves: three rounds. In
  // two, the halves need columns of their own, and 12 + 8 + 4 in are more than 20 in.
  @Test
  void fewer_rounds_of_cuts_may_take_more_sheets() throws IOException {
    String rows =
        """
        rows of panes
          pane   | wide  | high  | needed | turns
          "door" | 12 in | 20 in | 1      | false
          "lid"  | 8 in  | 12 in | 1      | false
          "half" | 4 in  | 8 in  | 2      | false
        rows of stock
          sheet    | wide  | high
          "square" | 20 in | 20 in
        """;
    for (int rounds : List.of(0, 2, 3, 4)) {
      String job = job(SHEETS.replace("rounds = 0", "rounds = " + rounds), rows);
      List<JsonNode> sheets = taken(job);
      assertThat(sheets).as("in %d rounds", rounds).hasSize(rounds == 2 ? 2 : 1);
      for (JsonNode sheet : sheets) {
        SawnSheet sawn = SawnSheet.of(sheet, Rational.of(20), Rational.of(20), Rational.ZERO);
        assertThat(sawn.rounds()).isBetween(1, rounds == 0 ? 3 : rounds);
      }
    }
  }

  @Test
  void every_cut_goes_right_through_a_panel_that_is_there_and_frees_each_piece()
      throws IOException {
    String job =
        job(
            SHEETS,
            """
            rows of panes
              pane     | wide      | high      | needed
              "chart"  | 17 3/8 in | 21 1/2 in | 3
              "lamp"   | 9 1/16 in | 12 in     | 7
              "ticket" | 5 in      | 3 1/4 in  | 11
              "log"    | 30 in     | 14 in     | 2
            rows of stock
              sheet   | wide  | high  | blade
              "large" | 32 in | 40 in | 1/8 in
            """);
    List<String> seen = new ArrayList<>();
    for (JsonNode sheet : taken(job)) {
      SawnSheet.of(sheet, Rational.of(32), Rational.of(40), Rational.of(1, 8));
      list(sheet, "/pieces").forEach(piece -> seen.add(piece.at("/values/label/exact").asText()));
    }
    assertThat(seen).hasSize(3 + 7 + 11 + 2);
    assertThat(seen.stream().filter("ticket"::equals)).hasSize(11);
  }

  @Test
  void a_plan_is_asked_for_by_its_name_in_any_case() throws IOException {
    String job = job(STICKS, "rows of parts\n  part | long | needed\n  \"a\" | 1 in | 0\n");
    assertThat(told(0, job, "--plan", "RAIL")).contains("nothing to cut: no part has a quantity");
    CommandRun other = CommandRun.of("cuts", job, "--plan", "windows", "--json");
    assertThat(other.status()).isEqualTo(2);
    assertThat(other.out()).isEmpty();
    assertThat(other.err()).contains("no plan is called 'windows'; there are: rail");
  }

  @Test
  void a_job_with_no_plan_has_an_empty_answer() throws IOException {
    JsonNode none = json(0, job("workbook \"None\"\npage p\n", "a = 1 in\n"));
    assertThat(none.get("plans")).isEmpty();
    assertThat(none.get("errors")).isEmpty();
  }

  private static List<JsonNode> taken(String job, String... options) throws IOException {
    return list(json(0, job, options), "/plans/0/materials/0/taken");
  }

  private static List<String> labels(JsonNode stick) {
    return list(stick, "/cuts").stream()
        .map(cut -> cut.at("/values/label/exact").asText())
        .toList();
  }

  /** From where to where each cut goes, in inches. */
  private static List<String> marks(JsonNode stick) {
    return list(stick, "/cuts").stream()
        .map(cut -> cut.get("values"))
        .map(values -> number(values, "start") + "-" + number(values, "end"))
        .toList();
  }

  private static Rational number(JsonNode values, String column) {
    return exact(values, "/" + column + "/exact");
  }

  private static Rational exact(JsonNode node, String path) {
    return Rational.parse(node.at(path).asText());
  }

  private static List<JsonNode> list(JsonNode node, String path) {
    return StreamSupport.stream(node.at(path).spliterator(), false).toList();
  }

  private String job(String tables, String rows) throws IOException {
    Path job = folder.resolve("job.batten");
    Files.writeString(job, tables + rows.indent(2));
    return job.toString();
  }

  private static JsonNode json(int status, String job, String... options) throws IOException {
    List<String> all = new ArrayList<>(List.of(options));
    all.add("--json");
    return new JsonMapper().readTree(told(status, job, all.toArray(String[]::new)));
  }

  private static String told(int status, String job, String... options) {
    List<String> arguments = new ArrayList<>(List.of("cuts", job));
    arguments.addAll(List.of(options));
    CommandRun run = CommandRun.of(arguments.toArray(String[]::new));
    assertThat(run.status()).as(run.err()).isEqualTo(status);
    return run.out();
  }
}
