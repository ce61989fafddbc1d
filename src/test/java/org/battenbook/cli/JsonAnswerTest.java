package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.battenbook.Golden;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The JSON shapes that DEVELOPERS.md documents. */
class JsonAnswerTest {
  private static final String MUSEUM = "workbooks/saltmarsh-ferry-museum.batten";
  private static final String FIRST = "workbooks/first-frame.batten";
  private static final List<String> VALUE =
      List.of("name", "shown", "exact", "unit", "approximate", "formula", "at");

  @Test
  void fill_has_pages_lines_tables_verdicts_and_errors() throws IOException {
    JsonNode job = json("fill", FIRST, "--json");
    assertThat(job.fieldNames())
        .toIterable()
        .containsExactly(
            "workbook", "file", "editions", "pages", "checks", "cautions", "general", "errors");
    assertThat(job.get("workbook").asText()).isEqualTo("My first frame");
    assertThat(job.get("file").asText()).isEqualTo(FIRST);
    assertThat(job.get("errors")).isEmpty();
    assertThat(job.at("/checks/0").fieldNames())
        .toIterable()
        .containsExactly("passes", "text", "at");
    assertThat(job.at("/cautions/0").fieldNames())
        .toIterable()
        .containsExactly("applies", "text", "at");
    JsonNode page = named(job.get("pages"), "pieces");
    assertThat(page.fieldNames()).toIterable().containsExactly("name", "lines", "tables");
    JsonNode table = named(page.get("tables"), "pieces");
    assertThat(table.fieldNames()).toIterable().containsExactly("name", "columns", "rows");
    JsonNode row = table.at("/rows/0");
    assertThat(row.get("row").asText()).isEqualTo("Heron, in ink");
    List<String> columns = texts(table.get("columns"));
    assertThat(row.get("values").fieldNames()).toIterable().containsExactlyElementsOf(columns);
    row.get("values")
        .forEach(
            value -> assertThat(value.fieldNames()).toIterable().containsExactlyElementsOf(VALUE));
  }

  @Test
  void values_are_exact_in_the_base_unit_of_their_dimension() throws IOException {
    JsonNode row =
        named(json("fill", MUSEUM, "--json").get("pages"), "pieces").at("/tables/0/rows/0/values");
    assertThat(row.at("/width/exact").asText()).isEqualTo("1485/127");
    assertThat(row.at("/width/unit").asText()).isEqualTo("in");
    assertThat(row.at("/width/shown").asText()).isEqualTo("297 mm");
    assertThat(row.at("/width/at").asText()).startsWith("saltmarsh-ferry-museum.batten:");
    assertThat(row.at("/quantity/unit").asText()).isEmpty();
    assertThat(row.at("/moulding/exact").asText()).isEqualTo("ferry rail");
  }

  @Test
  void a_workbook_with_errors_has_no_pages_and_says_what_is_wrong() throws IOException {
    CommandRun run =
        CommandRun.of(
            "fill", Golden.path("bad-input/several-faults/job.batten").toString(), "--json");
    assertThat(run.status()).isEqualTo(3);
    JsonNode job = new JsonMapper().readTree(run.out());
    assertThat(job.get("pages")).isEmpty();
    assertThat(job.get("errors")).hasSize(3);
    assertThat(job.at("/errors/1/text").asText())
        .isEqualTo("there is no line 'hight'; did you mean 'height'?");
    assertThat(job.at("/errors/1/at").asText()).isEqualTo("job.batten:5");
  }

  @Test
  void a_value_with_an_error_has_no_exact_one() throws IOException {
    CommandRun run =
        CommandRun.of(
            "fill", Golden.path("bad-input/zero-rounding-step/job.batten").toString(), "--json");
    assertThat(run.status()).isEqualTo(3);
    JsonNode job = new JsonMapper().readTree(run.out());
    JsonNode rail = named(job.at("/pages/0/lines"), "top rail");
    assertThat(rail.get("exact").isNull()).isTrue();
    assertThat(job.get("errors")).hasSize(1);
  }

  @Test
  void why_nests_what_a_value_came_from() throws IOException {
    JsonNode why = json("why", MUSEUM, "top rail to cut of Tide chart, north", "--json");
    assertThat(why.fieldNames())
        .toIterable()
        .containsExactly(
            "place", "value", "withValues", "from", "changed", "override", "rounding", "editions");
    assertThat(why.at("/rounding/step").asText()).isEqualTo("1/16 in");
    assertThat(why.at("/rounding/movedBy").asText()).isEqualTo("19/508 in");
    assertThat(texts(why.get("from"), "place"))
        .containsExactly("outside width needed of \"Tide chart, north\"", "rail step");
    Golden.assertSame(
        "commands/why-changed.json", run("why", MUSEUM, "fitting allowance", "--json"));
    Golden.assertSame(
        "commands/why-as-cut.json",
        run("why", MUSEUM, "top rail of The Heron, elevation", "--json"));
  }

  /** Readers of JSON take a thousand levels; a chain of lines may be longer. */
  @Test
  void why_leaves_out_what_lies_too_deep(@TempDir Path folder) throws IOException {
    String chain =
        IntStream.rangeClosed(1, 2000)
            .mapToObj(i -> "  x%d = x%d + 1 in\n".formatted(i, i - 1))
            .collect(Collectors.joining());
    Path job = folder.resolve("job.batten");
    Files.writeString(job, "workbook \"Chain\"\npage p\n  x0 = 1 in\n" + chain);
    JsonNode why = json("why", job.toString(), "x2000", "--json");
    JsonNode last = why;
    int steps = 0;
    while (last.get("from").size() > 0) {
      last = last.at("/from/0");
      steps++;
    }
    assertThat(steps).isEqualTo(400);
    assertThat(last.get("place").asText()).isEqualTo("x1600");
    assertThat(last.get("deeper").asBoolean()).isTrue();
    JsonNode near = json("why", job.toString(), "x2000", "--json", "--depth", "1");
    assertThat(near.at("/from/0/from")).isEmpty();
    assertThat(near.at("/from/0/deeper").asBoolean()).isTrue();
    assertThat(near.has("deeper")).isFalse();
  }

  @Test
  void feeds_lists_every_value_with_its_place() throws IOException {
    JsonNode feeds = json("feeds", FIRST, "mat overlap", "--json");
    assertThat(feeds.fieldNames()).toIterable().containsExactly("place", "value", "feeds");
    assertThat(feeds.at("/feeds/0").fieldNames())
        .toIterable()
        .containsExactly("place", "direct", "value");
    assertThat(texts(feeds.get("feeds"), "place"))
        .contains("top rail of \"Heron, in ink\"", "total weight");
  }

  private static JsonNode json(String... arguments) throws IOException {
    return new JsonMapper().readTree(run(arguments));
  }

  private static String run(String... arguments) {
    CommandRun run = CommandRun.of(arguments);
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    return run.out();
  }

  private static JsonNode named(JsonNode array, String name) {
    for (JsonNode element : array) {
      if (element.get("name").asText().equals(name)) {
        return element;
      }
    }
    throw new AssertionError("no " + name + " in " + array);
  }

  private static List<String> texts(JsonNode array) {
    return array.valueStream().map(JsonNode::asText).toList();
  }

  private static List<String> texts(JsonNode array, String field) {
    return array.valueStream().map(element -> element.get(field).asText()).toList();
  }
}
