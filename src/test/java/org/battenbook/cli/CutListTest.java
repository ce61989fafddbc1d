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

/** What the cut list says of small jobs, reckoned again from the job's own numbers. */
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
          stops within = 1/32 in
          parts of parts
            length      = long
            quantity    = needed
            material    = wood
            kerf        = along
            nests by    = run
            matched set = frame
            sets        = frames
          stock of stock
            length     = length
            material   = wood
            price      = price
            on hand    = rack
            any number = any
            offcut     = old
            starts at  = begins
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
        sheet plan lite
          stages = rounds
          parts of panes
            across   = wide
            down     = high
            quantity = needed
            may turn = turns
          stock of stock
            across = wide
            down   = high
            price  = price
            kerf   = blade
      """;

  @TempDir Path folder;

  // A pane 38 in wide lies on a sheet 20 in wide only turned; both do not lie on one sheet.
  @Test
  void turned_pieces_say_so_on_their_own_sheet_alone() throws IOException {
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
        told(0, job).lines().map(String::strip).filter(line -> line.startsWith("piece ")).toList();
    assertThat(headings).hasSize(2);
    assertThat(headings.stream().filter(line -> line.endsWith("label  turned"))).hasSize(1);
    assertThat(headings.stream().filter(line -> line.endsWith("label"))).hasSize(1);
    for (JsonNode sheet : list(json(0, job), "/plans/0/materials/0/taken")) {
      JsonNode piece = sheet.at("/pieces/0/values");
      boolean isLong = piece.at("/label/exact").asText().equals("long");
      assertThat(piece.at("/turned/exact").asText()).isEqualTo(isLong ? "yes" : "no");
      assertThat(number(piece, "across")).isEqualTo(Rational.of(isLong ? 18 : 17));
      assertThat(number(piece, "down")).isEqualTo(Rational.of(isLong ? 38 : 17));
    }
  }

  // Five panes of a half large sheet: two large ones and a small one, 2 × 30 + 16 USD, where three
  // large ones are 90 USD and five small ones 80 USD.
  @Test
  void several_sizes_go_together_where_that_is_cheapest_and_have_a_price_in_all()
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
        .contains("· 2 of large, 40 in by 40 in: 60.00 USD\n")
        .contains("· 1 of small, 20 in by 40 in: 16.00 USD\n")
        .contains("· in all: 76.00 USD\n");
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
        .doesNotContain("in all");
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
    assertThat(told(0, priced)).contains("· in all, of what has a price: 23.75 USD\n");
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
        .contains("From the rack\n  · 1 of leftover, 50 in\n")
        .contains("To buy\n  · 2 of oak 8 ft, 96 in\n\n");
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
