package org.battenbook.keep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.TextLoader;
import org.junit.jupiter.api.Test;

/** What plans change in the texts of a workbook. */
class KeepingTest {
  /** Of a lath of 40 in, two slats of 15 in leave 10 in. */
  private static final String TABLES =
      SlatShop.TABLES
          + """
              rows of shop
                sort       | length
                "new lath" | 40 in
            """;

  private static final String SLATS =
      """
        rows of slats
          slat   | long  | asked
          "slat" | 15 in | 4
      """;

  private static final String HEAD = "workbook \"Bench\"\nfollows \"shop.batten\"\npage wood\n";

  private static TextLoader files(String rack) {
    return new TextLoader()
        .with("shop.batten", "workbook \"Shop\"\n" + TABLES + rack)
        .with("job.batten", HEAD + SLATS);
  }

  private static Keeping keeping(TextLoader files) throws NotKept {
    Filled filled = files.open().fill();
    return Keeping.of(filled, filled.plans());
  }

  /** The new texts by the names of their files. */
  private static Map<String, String> kept(TextLoader files) throws NotKept {
    Keeping keeping = keeping(files);

    Map<String, String> texts = new LinkedHashMap<>();
    keeping.texts().forEach((source, text) -> texts.put(source.name(), text));
    return texts;
  }

  /** What becomes of the rack's rows. */
  private static String rackAfter(String rack) throws NotKept {
    String shop = "workbook \"Shop\"\n" + TABLES;
    String after = Objects.requireNonNull(kept(files(rack)).get("shop.batten"));
    assertThat(after).startsWith(shop);
    return after.substring(shop.length());
  }

  @Test
  void a_lath_of_the_rack_is_taken_and_offcuts_lie_there_instead() throws NotKept {
    assertThat(
            rackAfter(
                """
                  rows of rack
                    lath    | length | on hand | offcut
                    "first" | 40 in  | 3       | false -- from the roof
                """))
        .isEqualTo(
            """
              rows of rack
                lath    | length | on hand | offcut
                "first" | 40 in  | 1       | false -- from the roof

              rows of rack
                lath            | wood  | length | on hand | offcut
                "Bench, ash: 1" | "ash" | 10 in  | 1       | true
                "Bench, ash: 2" | "ash" | 10 in  | 1       | true
            """);
  }

  @Test
  void rows_are_written_under_headings_that_have_all_of_their_columns() throws NotKept {
    assertThat(
            rackAfter(
                """
                  rows of rack
                    offcut | lath            | wood  | length | on hand
                           | "first"         | "ash" | 40 in  | 2
                  rows of slats
                    slat | long | asked
                """))
        .isEqualTo(
            """
              rows of rack
                offcut | lath            | wood  | length | on hand
                       | "first"         | "ash" | 40 in  | 0
                true   | "Bench, ash: 1" | "ash" | 10 in  | 1
                true   | "Bench, ash: 2" | "ash" | 10 in  | 1
              rows of slats
                slat | long | asked
            """);
  }

  @Test
  void a_count_that_is_not_written_is_written_behind_the_others() throws NotKept {
    assertThat(
            rackAfter(
                """
                  rows of rack
                    lath     | wood  | length | offcut
                    "a lath" | "ash" | 40 in  |        -- straight
                    "b lath" | "oak" | 40 in  |
                """))
        .isEqualTo(
            """
              rows of rack
                lath     | wood  | length | offcut | on hand
                "a lath" | "ash" | 40 in  | | 0        -- straight
                "b lath" | "oak" | 40 in  | |
                "Bench, ash: 1" | "ash" | 10 in  | true | 1
                "Bench, ash: 2" | "ash" | 10 in  | true | 1
            """);
  }

  @Test
  void an_empty_count_is_filled_in_and_a_formula_is_lowered() throws NotKept {
    assertThat(
            rackAfter(
                """
                  rows of rack
                    lath  | wood  | on hand | length | offcut
                    "one" | "ash" |         | 40 in  |
                    "sum" | "ash" | 1 + 1   | 40 in  |
                """))
        .startsWith(
            """
              rows of rack
                lath  | wood  | on hand | length | offcut
                "one" | "ash" | 0       | 40 in  |
                "sum" | "ash" | (1 + 1) - 1 | 40 in |
            """);
  }

  @Test
  void the_job_remembers_what_it_took_and_keeps_nothing_twice() throws NotKept {
    TextLoader files =
        files(
            """
              rows of rack
                lath    | wood  | length | on hand | offcut
                "first" | "ash" | 40 in  | 1       | false
            """);
    Map<String, String> kept = kept(files);
    assertThat(kept.get("job.batten"))
        .isEqualTo(
            HEAD
                + SLATS
                + """

                page wood
                  rows of taken
                    lath       | length | bought | stored
                    "new lath" | 40 in  | 1      | 0
                    "first"    | 40 in  | 0      | 1
                """);
    kept.forEach(files::with);
    assertThatThrownBy(() -> keeping(files))
        .isInstanceOf(NotKept.class)
        .hasMessageContaining("nothing to update");
  }

  @Test
  void a_further_part_of_a_job_is_recorded_below_the_first_and_named_apart() throws NotKept {
    TextLoader files =
        new TextLoader()
            .with(
                "shop.batten",
                "workbook \"Shop\"\n"
                    + TABLES.replace("if (count of taken) > 0 then 0 else asked", "asked"))
            .with("job.batten", HEAD + SLATS);
    Map<String, String> first = kept(files);
    first.forEach(files::with);
    Map<String, String> second = kept(files);
    assertThat(second.get("job.batten"))
        .contains("    \"new lath\" | 40 in  | 2      | 0\n")
        .contains("    \"new lath (2)\" | 40 in  | 2      | 0\n")
        .contains("\"Bench, ash: 1 (2)\"");
  }

  @Test
  void lines_break_as_they_do_in_the_file() throws NotKept {
    TextLoader files = files("");
    files.with("job.batten", (HEAD + SLATS).stripTrailing().replace("\n", "\r\n"));
    assertThat(Objects.requireNonNull(kept(files).get("job.batten")).replace("\r\n", ""))
        .doesNotContain("\n");
  }

  @Test
  void an_offcut_too_short_is_not_kept_and_nothing_to_keep_is_said() {
    TextLoader files = files("");
    files.with("job.batten", HEAD + SLATS.replace("| 4", "| 0"));
    assertThatThrownBy(() -> keeping(files)).hasMessageContaining("nothing to update");
  }

  @Test
  void a_plan_whose_check_fails_keeps_nothing() {
    TextLoader files = files("");
    files.with("job.batten", HEAD + SLATS.replace("15 in", "50 in"));
    assertThatThrownBy(() -> keeping(files))
        .hasMessageStartingWith(
            "the stock of the plan 'slat' cannot be updated while this check fails: ")
        .hasMessageContaining("fits no stick");
  }

  @Test
  void a_count_that_a_change_decides_is_told_of_before_anything_is_written() {
    TextLoader files =
        files(
            """
              rows of rack
                lath    | wood  | length | on hand | offcut
                "first" | "ash" | 40 in  | 1       | false
            """);
    files.with(
        "job.batten",
        "workbook \"Bench\"\nfollows \"shop.batten\"\n"
            + "change on hand of rack \"first\" = 2 because \"one more was found\"\npage wood\n"
            + SLATS);
    assertThatThrownBy(() -> keeping(files))
        .hasMessageContaining("is set at job.batten:3")
        .hasMessageContaining("change it there by hand to 0");
  }

  @Test
  void without_a_table_to_keep_in_nothing_is_kept() {
    String text =
        ("workbook \"Shop\"\n" + TABLES).replaceAll("(?s)    keep in.*?from stock = stored\n", "");
    TextLoader files = files("").with("shop.batten", text);
    assertThatThrownBy(() -> keeping(files)).hasMessageContaining("'keep in'");
  }
}
