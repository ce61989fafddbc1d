package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.battenbook.cli.TextTable.Column;
import org.battenbook.source.Ink;
import org.battenbook.source.InkedText;
import org.junit.jupiter.api.Test;

class TextTableTest {
  private static final List<Column> COLUMNS =
      List.of(
          new Column("title", false), new Column("top rail", true), new Column("moulding", false));

  @Test
  void texts_begin_at_the_left_and_numbers_end_at_the_right() {
    assertThat(print(100, "Tide chart | 19 3/8 in | ash cap", "Fares | 9 in |"))
        .isEqualTo(
            """
            title        top rail  moulding
            Tide chart  19 3/8 in  ash cap
            Fares            9 in
            """);
  }

  @Test
  void a_wide_table_goes_on_below_with_its_first_column_again() {
    assertThat(print(24, "Tide chart | 19 3/8 in | ash cap"))
        .isEqualTo(
            """
            title        top rail
            Tide chart  19 3/8 in

            title       moulding
            Tide chart  ash cap
            """);
  }

  @Test
  void a_column_wider_than_the_page_is_still_shown() {
    assertThat(print(5, "Tide chart | 19 3/8 in | ash cap").lines().filter(String::isEmpty))
        .hasSize(1);
  }

  @Test
  void a_table_of_one_column_or_no_rows_is_a_table() {
    assertThat(new TextTable(COLUMNS.subList(0, 1)).lines(100, Ink.ASIDE))
        .containsExactly(InkedText.of(Ink.ASIDE, "title"));
    assertThat(print(100)).isEqualTo("title  top rail  moulding\n");
  }

  @Test
  void a_long_text_goes_on_below_itself() {
    String advice = "Guard on, eye and ear protection on, hands well clear of the blade, always.";
    assertThat(print(100, advice + " | 1 | x").lines().skip(1))
        .containsExactly(
            "Guard on, eye and ear protection on, hands well clear of the         1  x",
            "blade, always.");
  }

  @Test
  void wide_characters_keep_the_columns_straight() {
    assertThat(print(100, "額縁 | 1 in | x", "abcd | 1 in | x"))
        .contains("額縁       1 in", "abcd       1 in");
  }

  private static String print(int width, String... rows) {
    TextTable table = new TextTable(COLUMNS);
    for (String row : rows) {
      table.add(List.of(Pattern.compile(" *\\| *").split(row, -1)));
    }
    return table
        .lines(width, Ink.ASIDE)
        .map(line -> line.text() + "\n")
        .collect(Collectors.joining());
  }
}
