package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.battenbook.workbook.Repeated.name;
import static org.battenbook.workbook.Repeated.repeated;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.battenbook.bound.Bound;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A file that is just beyond a bound is refused with its place, before the work is done. Costly
 * files within the bounds are those of {@code CostlyFilesTest}.
 */
class BoundedFilesTest {
  @TempDir Path folder;

  private String told(String text) throws IOException {
    Path job = folder.resolve("job.batten");
    Files.writeString(job, "workbook \"Job\"\n" + text);
    CommandRun run = CommandRun.of("fill", job.toString());
    assertThat(run.status()).isEqualTo(3);
    return run.err();
  }

  private static String table(int columns, int rows) {
    return "page p\n  table t by name\n    given\n      name : text\n"
        + repeated(columns - 1, i -> "      %s : number = 1%n".formatted(name(i)))
        + "  rows of t\n    name\n"
        + repeated(rows, i -> "    \"r" + i + "\"\n");
  }

  @Test
  void one_statement_too_many() throws IOException {
    String lines = repeated(Bound.STATEMENTS.most(), i -> name(i) + " = 1\n");
    assertThat(told("page p\n" + lines))
        .contains("job.batten:20001:1", "more than 20,000 statements")
        .doesNotContain("and ");
  }

  @Test
  void statements_of_all_workbooks_are_counted_together() throws IOException {
    String page = "page p\n";
    Files.writeString(
        folder.resolve("a.batten"), page + repeated(15_000, i -> "a" + name(i) + " = 1\n"));
    assertThat(told("follows \"a.batten\"\n" + page + repeated(10_000, i -> name(i) + " = 1\n")))
        .contains("the job has more than 20,000 statements in total");
  }

  @Test
  void one_workbook_too_many() throws IOException {
    int most = Bound.WORKBOOK_FILES.most();
    for (int i = 0; i < most; i++) {
      Files.writeString(folder.resolve(i + ".batten"), "page p\n  " + name(i) + " = 1\n");
    }
    assertThat(told(repeated(most, "follows \"%d.batten\"%n"::formatted) + "page p\n  x = 1\n"))
        .contains("job.batten:201:", "the job has more than 200 workbooks");
  }

  @Test
  void one_row_too_many() throws IOException {
    int most = Bound.TABLE_ROWS.most();
    assertThat(told(table(1, most + 1)))
        .contains("job.batten:%d:5".formatted(most + 8), "this table has more than 200,000 rows")
        .contains("split the job in two");
  }

  @Test
  void one_column_too_many() throws IOException {
    assertThat(told(table(Bound.TABLE_COLUMNS.most() + 1, 1)))
        .contains("table 't' has more than 1,000 columns");
  }

  @Test
  void more_cells_than_all_tables_may_have() throws IOException {
    assertThat(told(table(41, 100_000))).contains("table 't' has more than 4,000,000 cells");
  }

  @Test
  void a_name_too_long() throws IOException {
    String name = "a".repeat(Bound.NAME.most() + 1);
    assertThat(told("page p\n  " + name + " = 1\n"))
        .contains("job.batten:3:3", "this name has more than 200 characters");
  }

  @Test
  void one_dot_too_many() throws IOException {
    String dots = "m" + ".m".repeat(Bound.TERMS.most());
    assertThat(
            told(
                "page p\n  table t by m\n    given\n      m : text\n    worked out\n      y = "
                    + dots
                    + "\n  rows of t\n    m\n    \"a\"\n"))
        .contains("job.batten:7:11", "has more than 1,000 dots");
  }

  @Test
  void statements_with_too_much_text() throws IOException {
    String sum = "1" + " + 1".repeat(400);
    assertThat(told("page p\n" + repeated(1_300, i -> "  " + name(i) + " = " + sum + "\n")))
        .contains("this workbook has more than 2,000,000 characters in its statements");
  }

  @Test
  void functions_that_are_long_once_they_are_written_out() throws IOException {
    String text =
        "to find f(x) = x"
            + " + x".repeat(999)
            + "\npage p\n"
            + repeated(300, i -> name(i) + " = f(1)\n");
    assertThat(told(text))
        .contains("the formulas of this job have more than 500,000 operations, 2,001 of")
        .contains("calculate what is used more than once on its own line");
  }

  @Test
  void formulas_in_very_many_cells() throws IOException {
    String text =
        "page p\n  table t by name\n    given\n      name : text\n      n : number\n"
            + "  rows of t\n    name | n\n"
            + repeated(60_000, i -> "    \"r%d\" | %d + 1 + 1 + 1 + 1%n".formatted(i, i));
    assertThat(told(text))
        .contains("the formulas in the cells of 'n' have more than 500,000 operations")
        .contains("write one formula for the column");
  }

  @Test
  void a_total_over_all_rows_for_each_row() throws IOException {
    assertThat(told(counting("n < this.n")))
        .contains("job.batten:9:7", "this job takes more than 500,000,000 steps to calculate")
        .contains("most of them for 'h of t' in its 30,000 rows")
        .contains("begin the condition after 'where' with '… = this'")
        .doesNotContain("and ");
  }

  @Test
  void a_group_of_all_rows_for_each_row() throws IOException {
    assertThat(told(counting("same = this.same and n < this.n")))
        .contains("this job takes more than 500,000,000 steps to calculate, too many of them here");
  }

  private static String counting(String where) {
    return "page p\n  table t by name\n    given\n      name : text\n      n : number\n"
        + "      same : number = 1\n    worked out\n      h = count of t where %s%n"
            .formatted(where)
        + "  rows of t\n    name | n\n"
        + repeated(30_000, i -> "    \"r%d\" | %d%n".formatted(i, i + 1));
  }

  @Test
  void one_opened_row_too_many() throws IOException {
    String opening =
        """
        page p
          table t by name
            given
              name : text
              n : count
          rows of t
            name | n
            "a"  | %d
          table o by place
            for each x of t, k to n
        """;
    assertThat(told(opening.formatted(Bound.TABLE_ROWS.most() + 1)))
        .contains("job.batten:11:5", "the table would have more than 200,000 rows");
  }

  @Test
  void a_text_that_doubles_with_each_line() throws IOException {
    String lines =
        repeated(40, i -> "  %s = \"{%s}{%s}\"%n".formatted(name(i + 1), name(i), name(i)));
    assertThat(told("page p\n  " + name(0) + " = \"ten letter\"\n" + lines))
        .contains("this text has more than 32,767 characters");
  }

  @Test
  void long_texts_in_every_row() throws IOException {
    String long20 =
        "page p\n  table t by name\n    given\n      name : text\n    worked out\n"
            + "      h = \""
            + "{name}".repeat(20)
            + "\"\n  rows of t\n    name\n";
    assertThat(
            told(long20 + repeated(10_000, i -> "    \"%s %d\"%n".formatted("a".repeat(150), i))))
        .contains("job.batten:7:7", "the texts that this job calculates have more than 20,000,000")
        .doesNotContain("and ");
  }

  @Test
  void sums_of_unlike_fractions_seen_from_every_row() throws IOException {
    String text =
        "page p\n  table t by name\n    given\n      name : text\n      n : number\n"
            + "    worked out\n      h = sum of 1/n over t where n <= this.n\n"
            + "  rows of t\n    name | n\n"
            + repeated(2_000, i -> "    \"r%d\" | %d%n".formatted(i, i + 1));
    assertThat(told(text))
        .contains("the long numbers of this job have more than 20,000,000 binary digits together")
        .contains("or split the job in two")
        .doesNotContain("and ");
  }
}
