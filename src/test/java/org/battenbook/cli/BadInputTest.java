package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.battenbook.Golden;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * What people are told of input that is wrong: the messages stand in {@code golden/bad-input}, one
 * folder for each case.
 */
class BadInputTest {
  private static final String FOLDER = "bad-input";

  /** Inputs that are no texts, or too large to keep, are laid here. */
  private static final Path MADE = Path.of("target", "bad-input");

  @TestFactory
  Stream<DynamicTest> each_fault_is_told_at_its_place() throws IOException {
    try (Stream<Path> cases = Files.list(Golden.path(FOLDER))) {
      return cases
          .filter(folder -> Files.exists(folder.resolve("job.batten")))
          .sorted()
          .map(folder -> folder.getFileName().toString())
          .map(name -> dynamicTest(name, () -> fill(name, Golden.path(FOLDER + "/" + name))))
          .toList()
          .stream();
    }
  }

  private static void fill(String name, Path folder) {
    check(name, CommandRun.of("fill", slashed(folder.resolve("job.batten"))), 3);
  }

  @Test
  void a_missing_file_is_missed() {
    check("missing-file", CommandRun.of("fill", "target/no-such-job.batten"), 2);
  }

  @Test
  void a_folder_is_no_workbook() {
    check("folder", CommandRun.of("fill", "src/test/resources/golden/bad-input/unknown-name"), 2);
  }

  @Test
  void a_link_in_a_circle_cannot_be_read() throws IOException {
    Path loop = made("unreadable");
    Files.deleteIfExists(loop);
    Files.createSymbolicLink(loop, loop.toAbsolutePath());
    check("unreadable", CommandRun.of("fill", slashed(loop)), 3);
  }

  @Test
  void bytes_that_are_no_text_are_told_with_their_line() throws IOException {
    Path job = made("not-utf-8");
    Files.write(job, "workbook \"Caf\u00e9\"\n".getBytes(StandardCharsets.ISO_8859_1));
    check("not-utf-8", CommandRun.of("fill", slashed(job)), 3);
  }

  @Test
  void ten_thousand_brackets_are_too_deep() throws Exception {
    Path job = made("deep-brackets");
    String formula = "(".repeat(10_000) + "1" + ")".repeat(10_000);
    Files.writeString(job, "workbook \"Deep\"\n\npage numbers\n  deep = " + formula + "\n");
    check("deep-brackets", CommandRun.withMemory("512m", "fill", slashed(job)), 3);
  }

  @Test
  void a_line_of_fifteen_megabytes_is_too_long() throws Exception {
    Path job = made("long-line");
    try (BufferedWriter out = Files.newBufferedWriter(job)) {
      out.write("workbook \"Long\"\n\npage numbers\n  long = 1");
      for (int i = 0; i < 15 << 20; i += 4) {
        out.write(" + 1");
      }
      out.write("\n");
    }
    check("long-line", CommandRun.withMemory("512m", "fill", slashed(job)), 3);
    Files.delete(job);
  }

  @Test
  void a_file_that_is_too_large_is_not_read() throws Exception {
    Path job = made("large-file");
    Files.writeString(job, "-- a note\n".repeat(2 << 20));
    check("large-file", CommandRun.withMemory("512m", "fill", slashed(job)), 3);
    Files.delete(job);
  }

  @Test
  void a_list_that_is_too_large_is_not_read() throws Exception {
    Path list = made("list").resolveSibling("large.csv");
    Files.writeString(list, "name,price\n".repeat(2 << 20));
    Path job = made("list-too-large");
    Files.writeString(
        job,
        """
        workbook "Large"
        page p
          table prices by name
            given
              name : text
          rows of prices from "large.csv"
        """);
    check("list-too-large", CommandRun.withMemory("512m", "fill", slashed(job)), 3);
    Files.delete(list);
  }

  @Test
  void a_list_of_one_mistake_throughout_is_not_read_to_its_end() throws Exception {
    Path list = made("list").resolveSibling("commas.csv");
    Files.writeString(list, "name;price (USD/ft)\n" + rows(100_000));
    Path job = made("list-of-one-mistake");
    Files.writeString(
        job,
        """
        workbook "Commas"
        currency USD
        page p
          table prices by name
            given
              name : text
              price : money / length
          rows of prices from "commas.csv"
        """);
    check("list-of-one-mistake", CommandRun.withMemory("512m", "fill", slashed(job)), 3);
    Files.delete(list);
  }

  private static String rows(int count) {
    StringBuilder rows = new StringBuilder();
    for (int i = 0; i < count; i++) {
      rows.append("moulding ").append(i).append(";4,").append(i).append('\n');
    }
    return rows.toString();
  }

  @Test
  void a_place_that_does_not_exist_gets_near_names() {
    String job = "workbooks/first-frame.batten";
    List<String> places =
        List.of("saw curf", "top rale of Heron, in ink", "top rail of Heron in inc", "top rail");
    StringBuilder told = new StringBuilder();
    for (String place : places) {
      CommandRun run = CommandRun.of("why", job, place);
      assertThat(run.status()).as(place).isEqualTo(2);
      told.append(run.err());
    }
    Golden.assertSame(FOLDER + "/unknown-place/messages.txt", told.toString());
  }

  @Test
  void a_page_that_does_not_exist_gets_near_names() {
    check(
        "unknown-page",
        CommandRun.of("fill", "workbooks/first-frame.batten", "--page", "allowance"),
        2);
  }

  private static void check(String name, CommandRun run, int status) {
    Golden.assertSame(FOLDER + "/" + name + "/messages.txt", run.err());
    assertThat(run.status()).isEqualTo(status);
    assertThat(run.err()).doesNotContain("\tat ", "Exception", "an error in Battenbook");
  }

  private static Path made(String name) throws IOException {
    Files.createDirectories(MADE);
    return MADE.resolve(name + ".batten");
  }

  private static String slashed(Path path) {
    return path.toString().replace('\\', '/');
  }
}
