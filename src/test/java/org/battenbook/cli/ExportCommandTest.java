package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExportCommandTest {
  private static final String FIRST = "workbooks/first-frame.batten";
  private static final String MUSEUM = "workbooks/saltmarsh-ferry-museum.batten";

  @TempDir Path folder;

  @Test
  void the_one_table_that_a_job_fills_is_meant_where_none_is_named() throws IOException {
    String csv = exported(FIRST, "first.csv");
    assertThat(csv).startsWith("\"title\",\"width (in)\",\"height (in)\"");
    assertThat(csv).contains("\r\n\"Heron, in ink\",\"8\",\"10\",");
    assertThat(csv.lines()).hasSize(2);
  }

  @Test
  void any_table_may_be_named() throws IOException {
    String csv = exported(MUSEUM, "mouldings.CSV", "--table", "Mouldings");
    assertThat(csv).startsWith("\"moulding\",\"face (in)\",").contains("\"ash cap\",\"1.5\",");
  }

  @Test
  void which_table_is_asked_where_several_may_be_meant() {
    assertRefused("museum.csv", "a .csv file holds one table; choose it with --table: pieces, ");
    assertRefused("museum.csv", "did you mean 'pieces' or 'places'?", "--table", "peices");
    assertRefused("museum.csv", "there are: general tolerances, ", "--table", "something else");
    assertRefused(
        "museum.xlsx",
        "--table works only with a .csv file, which holds one table",
        "--table",
        "pieces");
  }

  @Test
  void json_is_what_fill_answers() throws IOException {
    assertThat(exported(FIRST, "first.json"))
        .isEqualTo(CommandRun.of("fill", FIRST, "--json").out());
  }

  @Test
  void an_ending_that_says_nothing_is_answered_with_the_three() {
    for (String name : new String[] {"museum.ods", "museum", "museum.csv.gz"}) {
      assertRefused(name, "end its name in .xlsx, .csv or .json");
    }
  }

  @Test
  void what_the_job_is_read_from_is_not_replaced() throws IOException {
    Path list = Files.writeString(folder.resolve("laths.csv"), "lath,length\nlong,40 in\n");
    Path job =
        Files.writeString(
            folder.resolve("job.batten"),
            """
            workbook "Job"
            page wood
              table laths by lath
                given
                  lath   : text
                  length : length
              rows of laths from "laths.csv"
            """);
    Files.createSymbolicLink(folder.resolve("job.json"), job);
    String workbook = Files.readString(job);
    for (String name : new String[] {"laths.csv", "job.json"}) {
      CommandRun run = export(job.toString(), name);
      assertThat(run.status()).as(run.err()).isEqualTo(2);
      assertThat(run.err()).contains("it is a file of the job; name another file");
    }
    assertThat(list).hasContent("lath,length\nlong,40 in\n");
    assertThat(job).hasContent(workbook);
  }

  @Test
  void a_device_is_not_replaced() throws IOException {
    Files.createSymbolicLink(folder.resolve("device.csv"), Path.of("/dev/null"));
    CommandRun run = export(FIRST, "device.csv");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("it is a device or a pipe; name an ordinary file");
  }

  private String exported(String job, String name, String... more) throws IOException {
    CommandRun run = export(job, name, more);
    assertThat(run.err()).isEqualTo("wrote " + folder.resolve(name) + "\n");
    assertThat(run.status()).isZero();
    return Files.readString(folder.resolve(name));
  }

  private void assertRefused(String name, String reason, String... more) {
    CommandRun run = export(MUSEUM, name, more);
    assertThat(run.err()).startsWith("battenbook: ").contains(reason);
    assertThat(run.status()).isEqualTo(2);
    assertThat(folder).isEmptyDirectory();
  }

  private CommandRun export(String job, String name, String... more) {
    String[] arguments = new String[4 + more.length];
    System.arraycopy(
        new String[] {"export", job, "--to", folder.resolve(name).toString()}, 0, arguments, 0, 4);
    System.arraycopy(more, 0, arguments, 4, more.length);
    return CommandRun.of(arguments);
  }
}
