package org.battenbook.bind;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.battenbook.book.RowSegment;
import org.battenbook.book.Table;
import org.battenbook.source.Diagnostics;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.TextLoader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows know their names, where they come from, and from which one on they differ. */
class RowsTest {
  private static final String JOB =
      """
      workbook "t"
      page p
        table pieces by title
          given
            title    : text
            quantity : count = 1
        table places by place
          for each piece of pieces, number to quantity
          given
            wall : text = "north"
        table labels by label
          for each place of places
        rows of pieces
          title   | quantity
          "Tide"  | %d
          "Ferry" | %d
        rows of pieces
          title   | quantity
          "%s"    | %d
        rows of places
          place      | wall
          "Ferry: 1" | "south"
          "Tide: 2"  | "west"
      """;

  private static Filled filled(int tide, int ferry, String last, int lasts) {
    return TextLoader.of(JOB.formatted(tide, ferry, last, lasts)).open().fill();
  }

  private static Rows rows(Filled filled, String table) {
    return filled.results().rows(table(filled, table));
  }

  private static Table table(Filled filled, String name) {
    return requireNonNull(filled.results().decisions().book().book().table(name));
  }

  /** The tables of two readings are two, so rows of one that people write are compared by name. */
  @ParameterizedTest
  @CsvSource({
    "2, 2, Stamp, 1, -1", // the same
    "2, 2, Poster, 1, 2", // the last has another name
    "2, 2, stamp, 1, 2", // the same name in other letters
  })
  void written_rows_differ_from_the_first_other_name_on(
      int tide, int ferry, String last, int lasts, int first) {
    Rows before = rows(filled(2, 2, "Stamp", 1), "pieces");
    assertThat(rows(filled(tide, ferry, last, lasts), "pieces").firstOther(before))
        .isEqualTo(first);
  }

  @Test
  void rows_that_are_fewer_or_more_differ_where_one_ends() {
    Filled two = filled(2, 2, "Stamp", 1);
    Rows all = rows(two, "places");
    assertThat(all.firstOther(all)).isEqualTo(Rows.NO_ROW);
    Rows three = firstOf(all, 3);
    assertThat(three.firstOther(firstOf(all, 2))).isEqualTo(2);
    assertThat(firstOf(all, 2).firstOther(three)).isEqualTo(2);
    assertThat(firstOf(all, 0).firstOther(three)).isZero();
  }

  private static Rows firstOf(Rows all, int count) {
    RowKeys.Builder keys = new RowKeys.Builder("places", new Diagnostics());
    all.keys().names().subList(0, count).forEach(name -> keys.add(name, all.nameSpan(0)));
    return Rows.written(all.table(), keys.build());
  }

  @Test
  void an_opened_row_tells_where_it_comes_from() {
    Filled filled = filled(2, 2, "Stamp", 1);
    Rows places = rows(filled, "places");
    assertThat(places.keys().names())
        .containsExactly("Tide: 1", "Tide: 2", "Ferry: 1", "Ferry: 2", "Stamp");
    assertThat(places.openedFrom(3)).contains(new Rows.RowOf(table(filled, "pieces"), 1));
    assertThat(places.openedFrom(4)).contains(new Rows.RowOf(table(filled, "pieces"), 2));
    assertThat(places.nameSpan(3).line()).isEqualTo(16);
    assertThat(places.nameSpan(4).line()).isEqualTo(19);
    assertThat(rows(filled, "labels").nameSpan(0).line()).isEqualTo(15);
    assertThat(rows(filled, "pieces").openedFrom(0)).isEmpty();
    assertThat(rows(filled, "pieces").nameSpan(2).line()).isEqualTo(19);
  }

  @Test
  void segments_and_rows_find_each_other() {
    Filled filled = filled(2, 2, "Stamp", 1);
    Rows pieces = rows(filled, "pieces");
    List<RowSegment> written = table(filled, "pieces").segments();
    assertThat(pieces.row(written.get(1), 0)).isEqualTo(2);
    assertThat(pieces.at(written.get(0), 1)).isEqualTo(1);
    assertThat(pieces.at(written.get(0), 2)).isEqualTo(Rows.NO_ROW);
    assertThat(pieces.at(written.get(1), 2)).isZero();
    Rows places = rows(filled, "places");
    RowSegment entered = table(filled, "places").segments().get(0);
    assertThat(places.row(entered, 0)).isEqualTo(2);
    assertThat(places.row(entered, 1)).isEqualTo(1);
    assertThat(places.at(entered, 2)).isZero();
    assertThat(places.at(entered, 1)).isEqualTo(1);
    assertThat(places.at(entered, 0)).isEqualTo(Rows.NO_ROW);
  }

  @Test
  void rows_are_stated_in_the_files_that_write_them_or_what_opens_them() {
    Filled filled =
        new TextLoader()
            .with(
                "shop.batten",
                """
                workbook "shop"
                page p
                  table pieces by title
                    given
                      title : text
                  table places by place
                    for each piece of pieces
                    given
                      wall : text = "north"
                  table labels by label
                    for each place of places
                  table walls by wall
                    given
                      wall : text
                  rows of walls
                    wall
                    "north"
                """)
            .with(
                "job.batten",
                """
                workbook "job"
                follows "shop.batten"
                page q
                  rows of pieces
                    title
                    "Tide"
                """)
            .open()
            .fill();
    var job = rows(filled, "pieces").nameSpan(0).source();
    var shop = rows(filled, "walls").nameSpan(0).source();
    for (String table : List.of("pieces", "places")) {
      assertThat(rows(filled, table).areStatedIn(job)).as(table).isTrue();
      assertThat(rows(filled, table).areStatedIn(shop)).as(table).isFalse();
    }
    assertThat(rows(filled, "walls").areStatedIn(job)).isFalse();
    assertThat(rows(filled, "walls").areStatedIn(shop)).isTrue();
  }
}
