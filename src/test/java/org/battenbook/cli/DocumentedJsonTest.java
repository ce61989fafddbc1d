package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The JSON answers have the fields that DEVELOPERS.md says, and no others. */
class DocumentedJsonTest {
  private static final String MUSEUM = "workbooks/saltmarsh-ferry-museum.batten";

  /** Its fields are the columns of a table. */
  private static final String BY_COLUMN = "values";

  private static final Pattern FIELD = Pattern.compile("\"(\\w+)\"");

  /** A text that a field may hold. */
  private static final Pattern WORDS = Pattern.compile(": \"\\w+\"( or \"\\w+\")*");

  @TempDir Path folder;

  @Test
  void fill() throws IOException {
    assertDocumented("fill", json(0, "fill", MUSEUM, "--json"), faulty("fill"));
  }

  @Test
  void why() throws IOException {
    assertDocumented(
        "why",
        json(0, "why", MUSEUM, "balance", "--json"),
        json(0, "why", MUSEUM, "balance", "--depth", "2", "--json"),
        json(0, "why", MUSEUM, "saw kerf", "--json"),
        json(0, "why", MUSEUM, "top rail of The Heron, elevation", "--json"),
        json(0, "why", longJob(), "all", "--json"));
  }

  /** More rows than are told one by one. */
  private String longJob() throws IOException {
    StringBuilder text =
        new StringBuilder("workbook \"Long\"\npage p\n  table slats by slat\n    given\n");
    text.append("      slat : text\n      size : length\n  lines\n");
    text.append("    all = sum of size over slats\n  rows of slats\n    slat | size\n");
    for (int i = 0; i < 500; i++) {
      text.append("    \"s%d\" | 1 in%n".formatted(i));
    }
    return write(text.toString());
  }

  @Test
  void why_with_tolerances() throws IOException {
    assertDocumented(
        "why --tolerance",
        json(0, "why", MUSEUM, "top rail of Tide chart, north", "--tolerance", "--json"));
  }

  @Test
  void feeds() throws IOException {
    assertDocumented("feeds", json(0, "feeds", MUSEUM, "saw kerf", "--json"));
  }

  @Test
  void cuts() throws IOException {
    copy(Path.of("workbooks"), folder);
    String kept = folder.resolve("saltmarsh-ferry-museum.batten").toString();
    assertDocumented(
        "cuts",
        json(0, "cuts", MUSEUM, "--json"),
        json(0, "cuts", kept, "--update-stock", "--json"),
        faulty("cuts"));
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path one : all.filter(Files::isRegularFile).toList()) {
        Path copy = to.resolve(from.relativize(one).toString());
        Files.createDirectories(copy.getParent());
        Files.copy(one, copy);
      }
    }
  }

  private JsonNode faulty(String command) throws IOException {
    return json(3, command, write("workbook \"Faulty\"\npage p\n  a = 1 in + 1 h\n"), "--json");
  }

  private String write(String text) throws IOException {
    return Files.writeString(folder.resolve("job.batten"), text).toString();
  }

  private static JsonNode json(int status, String... arguments) throws IOException {
    CommandRun run = CommandRun.of(arguments);
    assertThat(run.status()).as(run.err()).isEqualTo(status);
    return new JsonMapper().readTree(run.out());
  }

  private static void assertDocumented(String command, JsonNode... answers) throws IOException {
    Set<String> told = new TreeSet<>();
    for (JsonNode answer : answers) {
      addFields(answer, told);
    }
    assertThat(told).isEqualTo(documented(command));
  }

  private static void addFields(JsonNode node, Set<String> into) {
    node.properties().forEach(field -> addField(field, into));
    if (node.isArray()) {
      node.forEach(one -> addFields(one, into));
    }
  }

  private static void addField(Map.Entry<String, JsonNode> field, Set<String> into) {
    into.add(field.getKey());
    if (field.getKey().equals(BY_COLUMN)) {
      field.getValue().forEach(value -> addFields(value, into));
    } else {
      addFields(field.getValue(), into);
    }
  }

  /** The fields that are told below the name of the command, and those of a value. */
  private static Set<String> documented(String command) throws IOException {
    String all = Files.readString(Path.of("DEVELOPERS.md"));
    String json = all.substring(all.indexOf("\n## JSON"));
    String shapes = json.substring(0, json.indexOf("\n## ", 1));
    String own = shapes.substring(shapes.indexOf("\n`%s --json`".formatted(command)) + 1);
    int next = own.indexOf(" --json`", own.indexOf(" --json`") + 1);
    String section = next < 0 ? own : own.substring(0, own.lastIndexOf('\n', next));
    Set<String> fields = new TreeSet<>();
    for (String text : List.of(section, value(shapes))) {
      Matcher field = FIELD.matcher(WORDS.matcher(text).replaceAll(""));
      while (field.find()) {
        fields.add(field.group(1));
      }
    }
    return fields;
  }

  private static String value(String shapes) {
    return shapes.lines().filter(line -> line.startsWith("V = ")).findFirst().orElseThrow();
  }
}
