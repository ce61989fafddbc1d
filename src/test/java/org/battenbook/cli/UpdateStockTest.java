package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.battenbook.book.Loader;
import org.battenbook.saving.Claim;
import org.battenbook.saving.NotWritten;
import org.battenbook.saving.StoppedSaves;
import org.battenbook.source.SourceText;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.Workbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * {@code cuts --update-stock} on copies of the shipped workbooks: what it writes, and what it does
 * not.
 */
class UpdateStockTest {
  private static final String JOB = "saltmarsh-ferry-museum.batten";
  private static final String SHOP = "marsh-lane-prices.batten";

  @TempDir Path folder;

  @BeforeEach
  void copyWorkbooks() throws IOException {
    Path from = Path.of("workbooks");
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.toList()) {
        Path to = folder.resolve(from.relativize(file).toString());
        Files.copy(file, to, StandardCopyOption.REPLACE_EXISTING);
      }
    }
  }

  private CommandRun cuts(String... options) {
    String[] arguments =
        Stream.concat(Stream.of("cuts", job()), Stream.of(options)).toArray(String[]::new);
    return CommandRun.of(arguments);
  }

  private String job() {
    return folder.resolve(JOB).toString();
  }

  private Filled filled() throws Loader.Unreadable {
    return Workbook.open(job()).fill();
  }

  private String text(String file) throws IOException {
    return Files.readString(folder.resolve(file));
  }

  @Test
  void a_job_that_is_cut_costs_what_it_was_planned_to_and_is_not_planned_again()
      throws IOException, Loader.Unreadable {
    Map<String, String> before = money();
    CommandRun run = cuts("--update-stock");
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("Stock updates")
        .contains("on hand of \"red oak with a knot\" in 'sticks on hand'");
    assertThat(money()).isEqualTo(before);
    assertThat(cuts().out()).contains("nothing to cut");
    String job = text(JOB);
    String shop = text(SHOP);
    CommandRun again = cuts("--update-stock");
    assertThat(again.status()).isEqualTo(2);
    assertThat(again.err()).contains("nothing to update");
    assertThat(text(JOB)).isEqualTo(job);
    assertThat(text(SHOP)).isEqualTo(shop);
  }

  /** What the job buys, costs and is charged. */
  private Map<String, String> money() throws Loader.Unreadable {
    Filled filled = filled();
    Map<String, String> money = new LinkedHashMap<>();
    for (String what :
        List.of(
            "material bought",
            "material used",
            "sticks bought of M 38",
            "bought of M 112",
            "sheets bought of G 25",
            "cost of bought of B 4",
            "profit")) {
      money.put(what, filled.find(what).exact());
    }
    return money;
  }

  @Test
  void all_but_new_rows_and_counts_stays_to_the_byte() throws IOException {
    String shop = text(SHOP);
    String job = text(JOB);
    cuts("--update-stock");
    assertThat(text(JOB)).startsWith(job);
    assertThat(without(text(SHOP), "Saltmarsh Ferry Museum, "))
        .isEqualTo(shop.replace("| 1       |", "| 0       |"));
  }

  private static String without(String text, String words) {
    return text.lines()
        .filter(line -> !line.contains(words))
        .reduce("", (all, line) -> all + line + "\n");
  }

  @Test
  void one_plan_is_recorded_alone_and_an_offcut_goes_into_the_next_plan()
      throws IOException, Loader.Unreadable {
    cuts("--update-stock", "--plan", "glazing");
    assertThat(text(SHOP)).contains("\"glass\"").doesNotContain("Museum, ash cap");
    assertThat(filled().find("sheets bought of G 25").exact()).isEqualTo("4");
    Files.writeString(folder.resolve(JOB), text(JOB).replaceAll("(?s)page sheets\n.*", ""));
    assertThat(
            filled()
                .find("offcut of glazing stock \"Saltmarsh Ferry Museum, glass: 1: 7\"")
                .exact())
        .isEqualTo("yes");
  }

  @Test
  void what_is_written_is_in_the_json_too() throws IOException {
    JsonNode answer =
        new JsonMapper().readTree(cuts("--update-stock", "--json", "--plan", "rail").out());
    assertThat(answer.at("/updates/0/change").asText()).contains("0 instead of 1");
    assertThat(answer.at("/updates/0/file").asText()).endsWith(SHOP);
  }

  @Test
  void a_save_that_was_stopped_midway_is_finished_by_the_next_command() throws IOException {
    String job = text(JOB);
    String shop = text(SHOP);
    cuts("--update-stock");
    Map<Path, String> texts =
        Map.of(folder.resolve(JOB), text(JOB), folder.resolve(SHOP), text(SHOP));
    Files.writeString(folder.resolve(JOB), job);
    Files.writeString(folder.resolve(SHOP), shop);
    StoppedSaves.stopMidway(Path.of(job()), texts);
    assertThat(text(SHOP)).isNotEqualTo(shop);
    assertThat(text(JOB)).isEqualTo(job);
    CommandRun next = CommandRun.of("fill", job());
    assertThat(next.err()).contains("its changes are now saved").contains("'" + JOB + "'");
    texts.forEach((file, text) -> assertThat(file).hasContent(text));
    assertThat(cuts("--update-stock").err()).contains("nothing to update");
  }

  @Test
  void a_save_that_was_stopped_early_is_undone_by_the_next_command() throws IOException {
    String shop = text(SHOP);
    Map<Path, String> texts =
        Map.of(folder.resolve(JOB), text(JOB) + "\n", folder.resolve(SHOP), shop + "\n");
    StoppedSaves.stopEarly(Path.of(job()), texts);
    CommandRun next = cuts("--update-stock");
    assertThat(next.status()).as(next.err()).isZero();
    assertThat(next.err()).contains("were undone");
    assertThat(text(SHOP)).isNotEqualTo(shop);
    assertThat(folder).isDirectoryNotContaining("glob:**.battenbook-*");
  }

  @Test
  void a_second_writer_is_told_that_there_is_one() throws IOException {
    String shop = text(SHOP);
    try (Claim claim = Claim.of(Path.of(job()))) {
      assertThat(claim.file()).hasFileName(JOB);
      CommandRun run = cuts("--update-stock");
      assertThat(run.status()).isEqualTo(2);
      assertThat(run.err()).contains("this process is changing it; wait until that ends");
      assertThat(cuts().status()).isZero();
    }
    assertThat(text(SHOP)).isEqualTo(shop);
  }

  @Test
  void a_link_to_a_workbook_stays_a_link() throws IOException {
    Path real = Files.createDirectories(folder.resolve("archive")).resolve(JOB);
    Files.move(folder.resolve(JOB), real);
    Files.createSymbolicLink(folder.resolve(JOB), real);
    CommandRun run = cuts("--update-stock");
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(folder.resolve(JOB)).isSymbolicLink();
    assertThat(Files.readString(real)).contains("glass");
    assertThat(cuts("--update-stock").err()).contains("nothing to update");
  }

  private void write(Map<SourceText, String> texts) throws NotWritten {
    try (Claim claim = Claim.of(Path.of(job()))) {
      RevisedFiles.write(claim, texts);
    }
  }

  @Test
  void a_file_that_was_changed_meanwhile_is_left_as_it_is() throws IOException {
    Path first = Files.writeString(folder.resolve("a.batten"), "one");
    Path second = Files.writeString(folder.resolve("b.batten"), "changed");
    Map<SourceText, String> texts = new LinkedHashMap<>();
    texts.put(SourceText.of(first.toString(), "one"), "two");
    texts.put(SourceText.of(second.toString(), "as it was read"), "three");
    assertThatThrownBy(() -> write(texts))
        .isInstanceOf(NotWritten.class)
        .hasMessageContaining("b.batten")
        .hasMessageContaining("run this again");
    assertThat(first).hasContent("one");
    assertThat(second).hasContent("changed");
  }

  @Test
  void the_mark_that_an_editor_puts_first_stays() throws IOException {
    Path file = folder.resolve("a.batten");
    Files.write(file, "\uFEFFone".getBytes(StandardCharsets.UTF_8));
    write(Map.of(SourceText.of(file.toString(), "one"), "two"));
    assertThat(Files.readString(file)).isEqualTo("\uFEFFtwo");
  }

  @Test
  void rows_of_a_list_cannot_be_changed_and_nothing_is() throws IOException {
    Files.writeString(
        folder.resolve("rack.csv"),
        "stick,moulding,length,on hand,offcut\nfrom the boat,ferry rail,1500 mm,1,true\n");
    String shop =
        text(SHOP)
            .replaceAll(
                "(?s)  rows of sticks on hand\n.*?  rows of defects\n.*?\n\n",
                "  rows of sticks on hand from \"rack.csv\"\n\n");
    Files.writeString(folder.resolve(SHOP), shop);
    CommandRun run = cuts("--update-stock");
    assertThat(run.status()).as(run.err()).isEqualTo(2);
    assertThat(run.err()).contains("rack.csv").contains("rows of sticks on hand");
    assertThat(text(SHOP)).isEqualTo(shop);
  }

  /** In this folder no file can be made, not even by one who may write everywhere. */
  @Test
  void where_one_file_cannot_be_written_the_others_are_as_before() throws IOException {
    Path sealed = Path.of("/proc/version");
    assumeTrue(Files.exists(sealed), "this needs a Linux machine: it has '/proc/version'");
    Path first = Files.writeString(folder.resolve("a.batten"), "one");
    Map<SourceText, String> texts = new LinkedHashMap<>();
    texts.put(SourceText.of(first.toString(), "one"), "two");
    texts.put(SourceText.of(sealed.toString(), Files.readString(sealed)), "three");
    assertThatThrownBy(() -> write(texts))
        .isInstanceOf(NotWritten.class)
        .hasMessageContaining("'/proc/version' cannot be written");
    assertThat(first).hasContent("one");
  }
}
