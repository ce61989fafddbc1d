package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.battenbook.Golden;
import org.battenbook.bench.WideBook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands on the shipped jobs, from end to end; what they tell stands in golden files. */
class CommandTest {
  private static final String MUSEUM = "workbooks/saltmarsh-ferry-museum.batten";
  private static final String FIRST = "workbooks/first-frame.batten";
  private static final String READING_ROOM = "workbooks/skerry-light-reading-room.batten";

  @TempDir Path folder;

  @Test
  void fill_shows_what_a_maker_wants_to_see() {
    Golden.assertSame("commands/fill-museum.txt", answer(0, "fill", MUSEUM));
    Golden.assertSame("commands/fill-first.txt", answer(0, "fill", FIRST));
    Golden.assertSame("commands/fill-reading-room.txt", answer(0, "fill", READING_ROOM));
  }

  @Test
  void fill_shows_any_page_whole() {
    Golden.assertSame(
        "commands/page-allowances.txt", answer(0, "fill", MUSEUM, "--page", "Allowances"));
    Golden.assertSame(
        "commands/page-bill.txt", answer(0, "fill", READING_ROOM, "--page", "bill of materials"));
    Golden.assertSame("commands/page-cleats.txt", answer(0, "fill", MUSEUM, "--page=cleats"));
  }

  @Test
  void fill_tells_which_checks_fail_and_which_inputs_are_missing() throws IOException {
    String job =
        job(
            """
        workbook "A wall too short"
        page wall "Wall"
          wall width : length
          gap        : length
          rails      = 30 in
          room left  = wall width - rails
          spare      = gap / 2
          require room left > 0 in
            else "The rails of {rails} do not fit a wall of {wall width}."
          require gap > 1 in
            else "Leave more than an inch."
          caution when rails > 20 in
            say "{rails} is long: ask for help."
        change wall width = 28 in because "the stair takes the rest"
        """);
    Golden.assertSame("commands/fill-broken.txt", answer(1, "fill", job));
  }

  @Test
  void fill_tells_errors_apart_from_missing_inputs() throws IOException {
    String job =
        job(
            """
        workbook "Split evenly"
        page wall "Wall"
          wall width : length
          frames = 0
          share  = 1 / frames
          require share < 1
            else "Hang more frames."
          require wall width > 1 ft
            else "The wall is too narrow."
        """);
    CommandRun run = CommandRun.of("fill", job);
    assertThat(run.status()).isEqualTo(3);
    assertThat(run.out())
        .contains("share ........ error: this divides by zero")
        .contains("Checks with an error\n  · Hang more frames.")
        .contains("Checks that need an input\n  · The wall is too narrow.");
  }

  @Test
  void why_tells_where_a_value_came_from() {
    Golden.assertSame(
        "commands/why-top-rail.txt", answer(0, "why", MUSEUM, "top rail of Tide chart, north"));
    Golden.assertSame(
        "commands/why-as-cut.txt", answer(0, "why", MUSEUM, "top rail of The Heron, elevation"));
    Golden.assertSame("commands/why-changed.txt", answer(0, "why", MUSEUM, "fitting allowance"));
  }

  @Test
  void why_goes_as_deep_as_is_asked() {
    String shallow = answer(0, "why", MUSEUM, "top rail of Tide chart, north", "--depth", "1");
    assertThat(shallow).contains("top rail to cut").contains("Deeper steps are hidden");
    assertThat(shallow).doesNotContain("outside width needed of");
    assertThat(answer(0, "why", MUSEUM, "total weight", "--depth=99"))
        .contains("lip of \"ferry rail\"")
        .doesNotContain("are hidden");
  }

  @Test
  void why_of_a_chain_of_thousands_goes_as_deep_as_answers_do() throws IOException {
    StringBuilder text = new StringBuilder("workbook \"Chain\"\npage p\n  a0 = 1 in\n");
    for (int i = 1; i < 10_000; i++) {
      text.append("  a%d = a%d + 1 in\n".formatted(i, i - 1));
    }
    Path job = Files.writeString(folder.resolve("chain.batten"), text);
    CommandRun run = CommandRun.of("why", job.toString(), "a9999", "--depth", "99999");
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.out()).contains("a9599 = ").doesNotContain("a9598 = ");
    assertThat(run.out()).endsWith("ask why about one of these, or add --depth.\n");
  }

  @Test
  void why_tells_how_far_a_value_may_be_off() {
    String place = "glazing play side to side of Fares of 1911";
    Golden.assertSame("commands/why-tolerance.txt", answer(0, "why", MUSEUM, place, "--tolerance"));
    assertThat(answer(0, "why", MUSEUM, place, "--tolerance", "--json"))
        .contains("\"worst\": \"3/64 in\"")
        .contains("\"coefficient\": \"-1\"");
    assertThat(answer(0, "why", MUSEUM, "overlap of Fares of 1911", "--tolerance"))
        .contains("nothing that it is calculated from has a ±");
  }

  @Test
  void feeds_tells_what_depends_on_a_value() {
    Golden.assertSame("commands/feeds-saw-kerf.txt", answer(0, "feeds", MUSEUM, "saw kerf"));
    assertThat(answer(0, "feeds", MUSEUM, "total weight")).contains("nothing uses it");
  }

  @Test
  void export_writes_a_spreadsheet_over_an_earlier_one() throws IOException {
    Path target = Files.writeString(folder.resolve("first.xlsx"), "earlier");
    CommandRun run = CommandRun.of("export", FIRST, "--to", target.toString());
    assertThat(run.status()).isZero();
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).isEqualTo("wrote " + target + "\n");
    try (InputStream in = Files.newInputStream(target);
        XSSFWorkbook spreadsheet = new XSSFWorkbook(in)) {
      assertThat(spreadsheet.getNumberOfSheets()).isPositive();
    }
    assertThat(folder).isDirectoryNotContaining("glob:**.part*");
  }

  @Test
  void export_says_why_it_cannot_write() throws IOException {
    assertRefused(folder.resolve("first.ods"), "end its name in .xlsx");
    assertRefused(folder.resolve("none/first.xlsx"), "there is no folder '" + folder + "/none'");
    Path taken = Files.createDirectory(folder.resolve("taken.xlsx"));
    assertRefused(taken, "it is a folder; name a file in it");
    Path file = Files.writeString(folder.resolve("file"), "");
    assertRefused(file.resolve("first.xlsx"), "Not a directory");
  }

  private static void assertRefused(Path target, String reason) {
    CommandRun run = CommandRun.of("export", FIRST, "--to", target.toString());
    assertThat(run.err()).startsWith("battenbook: '" + target + "'").contains(reason);
    assertThat(run.status()).isEqualTo(2);
  }

  @Test
  void a_wrong_command_line_is_answered_with_the_usage() {
    for (String[] arguments :
        new String[][] {
          {}, {"fil"}, {"fill"}, {"fill", FIRST, "--pgae", "x"}, {"why", FIRST}, {"export", FIRST}
        }) {
      CommandRun run = CommandRun.of(arguments);
      assertThat(run.status()).as(run.err()).isEqualTo(2);
      assertThat(run.out()).isEmpty();
      assertThat(run.err())
          .containsAnyOf("Usage: battenbook", "Did you mean", "Possible solutions");
    }
  }

  @Test
  void an_empty_argument_and_a_depth_below_nothing_are_refused() {
    CommandRun empty = CommandRun.of("why", FIRST, "");
    assertThat(empty.err()).contains("an argument is empty: write a name there, or leave it out");
    assertThat(empty.status()).isEqualTo(2);
    CommandRun above = CommandRun.of("why", FIRST, "saw kerf", "--depth=-1");
    assertThat(above.err()).contains("--depth must be at least 0; it is -1");
    assertThat(above.status()).isEqualTo(2);
  }

  @Test
  void help_and_version_are_answers() {
    Golden.assertSame("commands/help.txt", answer(0, "--help"));
    for (String command : new String[] {"fill", "cuts", "why", "feeds", "export", "completion"}) {
      assertThat(answer(0, command, "--help")).startsWith("Usage: battenbook " + command);
    }
    assertThat(answer(0, "--version")).startsWith("battenbook ");
  }

  @Test
  void completion_knows_every_command() {
    assertThat(answer(0, "completion"))
        .contains("fill", "why", "feeds", "export", "--page", "complete -F");
  }

  @Test
  void color_shows_only_where_it_is_wanted() {
    assertThat(CommandRun.of("fill", FIRST).out()).doesNotContain("\u001b");
    assertThat(CommandRun.coloured("fill", FIRST).out())
        .contains("\u001b[1mMy first frame\u001b[0m");
    assertThat(CommandRun.coloured("fill", "none.batten").err()).startsWith("\u001b[1;31m");
  }

  @Test
  void a_name_that_a_terminal_would_obey_is_only_shown() throws IOException {
    String job = job("workbook \"\u001b[2Jgone\"\npage p\n  a\u0007 = 1 in\n");
    CommandRun run = CommandRun.of("fill", job);
    assertThat(run.out() + run.err()).doesNotContain("\u001b", "\u0007");
  }

  @Test
  void the_same_job_gives_the_same_answer() {
    assertThat(answer(0, "fill", MUSEUM, "--json")).isEqualTo(answer(0, "fill", MUSEUM, "--json"));
  }

  private String job(String text) throws IOException {
    return Files.writeString(folder.resolve("job.batten"), text).toString();
  }

  private static String answer(int status, String... arguments) {
    CommandRun run = CommandRun.of(arguments);
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isEqualTo(status);
    return run.out();
  }

  @Test
  void a_job_of_thousands_is_exported_in_little_memory() throws Exception {
    String job = job(WideBook.text(6_000));
    Path file = folder.resolve("wide.xlsx");
    CommandRun run = CommandRun.withMemory("192m", "export", job, "--to", file.toString());
    assertThat(run.out() + run.err()).contains("wrote ");
    assertThat(run.status()).isZero();
    assertThat(Files.size(file)).isGreaterThan(1_000_000);
  }

  @Test
  void a_long_export_says_how_far_it_is_on_a_terminal_only() throws IOException {
    String job = job(WideBook.text(2_500));
    String file = folder.resolve("wide.xlsx").toString();
    assertThat(CommandRun.coloured("export", job, "--to", file).err())
        .containsPattern("\r2000 of \\d+ rows written\r +\rwrote ");
    assertThat(CommandRun.of("export", job, "--to", file).err()).doesNotContain("rows written");
  }

  @Test
  void values_that_no_spreadsheet_formula_says_are_listed() throws IOException {
    String job =
        job(
            """
        workbook "Labels"
        currency USD
        page labels
          price = 4.25 USD/ft
          label = "ash at {price}"
        """);
    String file = folder.resolve("labels.xlsx").toString();
    assertThat(CommandRun.of("export", job, "--to", file).err())
        .contains("These were written as fixed values; the spreadsheet will not recalculate them:")
        .containsPattern("\n  label: .+\n");
  }
}
