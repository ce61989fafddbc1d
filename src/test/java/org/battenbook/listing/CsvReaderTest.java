package org.battenbook.listing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.battenbook.bound.Bound;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CsvReaderTest {

  /** RFC 4180, section 2: the examples of its rules 1, 2, 5, 6 and 7; line breaks are ⏎ here. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      quoteCharacter = '~',
      textBlock =
          """
          1 ! aaa,bbb,ccc⏎zzz,yyy,xxx⏎                     ! [[aaa, bbb, ccc], [zzz, yyy, xxx]]
          2 ! aaa,bbb,ccc⏎zzz,yyy,xxx                      ! [[aaa, bbb, ccc], [zzz, yyy, xxx]]
          5 ! "aaa","bbb","ccc"⏎zzz,yyy,xxx                ! [[aaa, bbb, ccc], [zzz, yyy, xxx]]
          6 ! "aaa","b⏎bb","ccc"⏎zzz,yyy,xxx               ! [[aaa, b⏎bb, ccc], [zzz, yyy, xxx]]
          7 ! "aaa","b""bb","ccc"                          ! [[aaa, b"bb, ccc]]
          """)
  void the_rules_of_rfc_4180_are_kept(int rule, String file, String rows) throws BadList {
    assertThat(read(file.replace("⏎", "\r\n")).toString().replace("\r\n", "⏎"))
        .as("rule %d", rule)
        .isEqualTo(rows);
  }

  @Test
  void spaces_are_part_of_a_field() throws BadList {
    assertThat(read("a , b\r\n")).as("RFC 4180, rule 4").containsExactly(List.of("a ", " b"));
  }

  @Test
  void any_line_break_ends_a_row_and_a_blank_line_is_a_row() throws BadList {
    assertThat(read("a\n\nb\rc\r\nd"))
        .containsExactly(List.of("a"), List.of(), List.of("b"), List.of("c"), List.of("d"));
  }

  @Test
  void a_semicolon_in_the_first_line_parts_cells() throws BadList {
    assertThat(read("name;width, mm\na,b;3\n"))
        .containsExactly(List.of("name", "width, mm"), List.of("a,b", "3"));
    assertThat(read("name,\"a;b\"\nx,y;z\n"))
        .containsExactly(List.of("name", "a;b"), List.of("x", "y;z"));
    assertThat(read("\n,,\nname;b\n").get(2)).containsExactly("name", "b");
  }

  @Test
  void the_mark_that_some_editors_begin_with_is_left_out() throws BadList {
    assertThat(read("\uFEFFname\n")).containsExactly(List.of("name"));
  }

  @Test
  void quotes_that_do_not_pair_up_are_told_with_their_row() {
    for (String file : new String[] {"a\n\"b\nc", "a\n\"b\"c\n", "a\n\"b\" c,d\n"}) {
      BadList bad = refused(file);
      assertThat(bad.code()).as(file).isEqualTo("quotes-in-list");
      assertThat(bad.message()).isEqualTo("the quotes in row 2 of 'list.csv' do not match");
    }
  }

  @Test
  void what_is_larger_than_any_list_is_not_read() {
    assertThat(refused("a\n".repeat(Bound.LIST_ROWS.most() + 1)).message())
        .endsWith("200,000 rows");
    assertThat(refused("a\n" + ",".repeat(1_000) + "x").message())
        .endsWith("row 2 has more than 1,000 columns");
    assertThat(refused("\"" + "a\n".repeat(20_000) + "\"").message())
        .endsWith("a cell of row 1 has more than 32,767 characters");
    assertThat(refused(",".repeat(1_000_001)).message())
        .isEqualTo("a line of 'list.csv' has more than 1,000,000 characters");
  }

  @Test
  void what_is_written_reads_back_the_same() throws Exception {
    long seed = 4180;
    Random random = new Random(seed);
    for (int i = 0; i < 2_000; i++) {
      String text = text(random);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      CsvWriter csv = new CsvWriter(out);
      csv.text("first").text(text).text("last").endRow();
      csv.finish();
      assertThat(CsvReader.read("list.csv", out.toByteArray()))
          .as("seed %d, text %d", seed, i)
          .containsExactly(List.of("first", text, "last"));
    }
  }

  private static String text(Random random) {
    String signs = "=+-@'\t\r\n\",;|＝ ab1é½\uD83D\uDE00";
    StringBuilder text = new StringBuilder();
    int length = 1 + random.nextInt(8);
    for (int i = 0; i < length; i++) {
      text.appendCodePoint(signs.codePointAt(signs.offsetByCodePoints(0, random.nextInt(17))));
    }
    return text.toString();
  }

  private static List<List<String>> read(String file) throws BadList {
    return CsvReader.read("list.csv", file.getBytes(StandardCharsets.UTF_8));
  }

  private static BadList refused(String file) {
    return catchThrowableOfType(BadList.class, () -> read(file));
  }
}
