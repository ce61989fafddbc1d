package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shop that {@code start} lays out, used as its maker will use it. */
class StartCommandTest {
  private static final Pattern OFFERED =
      Pattern.compile("(?m)^-- (change (.+?) = (.+) because .+)$");

  @TempDir Path root;
  private Path shop = Path.of("");
  private String job = "";

  @BeforeEach
  void start() {
    shop = root.resolve("my shop");
    job = shop.resolve("jobs/first-frame.batten").toString();
    CommandRun run = CommandRun.of("start", shop.toString());
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.out())
        .contains("  cd '" + shop + "'\n  battenbook fill jobs/first-frame.batten\n");
  }

  @Test
  void its_first_job_fills_and_has_a_cut_list() {
    for (String command : List.of("fill", "cuts")) {
      CommandRun run = CommandRun.of(command, job);
      assertThat(run.status()).as(run.err()).isZero();
      assertThat(run.err()).isEmpty();
      assertThat(run.out()).contains("My first picture");
    }
  }

  @Test
  void its_own_file_fills_too() {
    CommandRun run = CommandRun.of("fill", shop.resolve("shop.batten").toString());
    assertThat(run.status()).as(run.err()).isZero();
  }

  /** Each offered change has the value of the standards, so that the text tells what holds now. */
  @Test
  void every_change_that_it_offers_works_and_shows_the_value_of_the_standards() throws IOException {
    Path file = shop.resolve("shop.batten");
    String text = Files.readString(file);
    List<String> names = OFFERED.matcher(text).results().map(found -> found.group(2)).toList();
    assertThat(names).hasSize(12);
    Files.writeString(file, OFFERED.matcher(text).replaceAll("$1"));
    for (String name : names) {
      CommandRun why = CommandRun.of("why", job, name);
      assertThat(why.status()).as(why.err()).isZero();
      Matcher value = Pattern.compile(" = (.+?) {2,}shop.batten:\\d+, input").matcher(why.out());
      assertThat(value.find()).as(why.out()).isTrue();
      assertThat(why.out()).contains("changed from " + value.group(1) + " (");
    }
  }

  @Test
  void stock_is_kept_in_the_shops_file() throws IOException {
    Path file = shop.resolve("shop.batten");
    String headings = "stick | moulding | length | on hand | offcut\n";
    String row = "\"first stick\" | \"shop walnut\" | 8 ft | 2 |\n";
    Files.writeString(file, Files.readString(file).replace(headings, headings + "    " + row));
    CommandRun run = CommandRun.of("cuts", job, "--update-stock");
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(Files.readString(file))
        .contains("\"first stick\" | \"shop walnut\" | 8 ft | 1 |")
        .contains("\"My first frame, shop walnut: 1\" | \"shop walnut\"");
    assertThat(run.out()).doesNotContain("no file has");
    assertThat(CommandRun.of("fill", job).status()).isZero();
  }

  @Test
  void a_folder_that_is_not_empty_is_left_alone() throws IOException {
    String before = Files.readString(Path.of(job));
    Files.writeString(Path.of(job), before + "-- mine\n");
    CommandRun again = CommandRun.of("start", shop.toString());
    assertThat(again.status()).isEqualTo(ExitStatus.COMMAND_LINE_WRONG.code());
    assertThat(again.err()).contains("is not empty; name a new folder");
    assertThat(Files.readString(Path.of(job))).isEqualTo(before + "-- mine\n");
    CommandRun file = CommandRun.of("start", job);
    assertThat(file.status()).isEqualTo(ExitStatus.COMMAND_LINE_WRONG.code());
    assertThat(file.err()).contains("is a file; name a folder");
  }

  @Test
  void an_empty_folder_will_do() throws IOException {
    Path empty = Files.createDirectory(root.resolve("empty"));
    assertThat(CommandRun.of("start", empty.toString()).status()).isZero();
    assertThat(empty.resolve("shop.batten")).exists();
  }
}
