package org.battenbook.evaluate;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import org.battenbook.book.Column;
import org.battenbook.workbook.Edit;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.TextLoader;
import org.junit.jupiter.api.Test;

/** What an edit works out again in columns that go row by row: up to where nothing changed. */
class RefillTest {
  private static final int ROWS = 4000;
  private static final int RESET = 2900;

  /** A running length that begins again behind each stop, of which there is one. */
  private static Filled rails() {
    StringBuilder text =
        new StringBuilder(
            """
            workbook "t"
            page p
              table rails by name
                given
                  name : text
                  width : length
                  stop : yes or no
                worked out
                  end = if first row then width else if stop then 0 in else above.end + width
                  next = if first row then 0 in else above.end * 2
                  step = if first row then 0 in else width - above.width
              lines
                extra = 1 in
                total = sum of width + extra over rails
                run = extra + (sum of width over rails)
              rows of rails
                name | width | stop
            """);
    for (int i = 0; i < ROWS; i++) {
      text.append("    \"r%d\" | 3 in | %s%n".formatted(i, i == RESET ? "yes" : "no"));
    }
    return TextLoader.of(text.toString()).open().fill();
  }

  @Test
  void an_edit_is_carried_to_the_next_stop_and_no_further() {
    Filled filled = rails();
    Edit edit = filled.withCell(column(filled, "width"), 1500, "4 in");
    Filled after = requireNonNull(edit.filled());
    for (String name : new String[] {"end", "next"}) {
      assertThat(kept(filled, after, name)).as(name).containsExactly(true, false, false, true);
    }
    assertThat(after.find("end of r" + (RESET - 1)).exact()).isEqualTo("" + (3 * RESET + 1));
    assertThat(after.find("end of r" + (ROWS - 1)).exact())
        .isEqualTo(filled.find("end of r" + (ROWS - 1)).exact());
  }

  @Test
  void an_edit_of_the_last_row_of_a_chunk_is_seen_in_the_first_of_the_next() {
    Filled filled = rails();
    Edit edit = filled.withCell(column(filled, "width"), 1023, "5 in");
    Filled after = requireNonNull(edit.filled());
    assertThat(after.find("step of r1023").exact()).isEqualTo("2");
    assertThat(after.find("step of r1024").exact()).isEqualTo("-2");
    assertThat(after.find("step of r1025").exact()).isEqualTo("0");
    assertThat(kept(filled, after, "step")).containsExactly(false, false, true, true);
  }

  @Test
  void a_total_that_reads_a_line_is_added_up_again_when_the_line_changes() {
    Filled filled = rails();
    Edit edit = filled.withFormula(filled.spot("extra").place(), "2 in");
    Filled after = requireNonNull(edit.filled());
    assertThat(after.find("total").exact()).isEqualTo("" + 5 * ROWS);
    assertThat(after.find("run").exact()).isEqualTo("" + (3 * ROWS + 2));
  }

  @Test
  void rows_that_go_one_by_one_are_held_in_lanes_when_they_are_done() {
    Filled filled = rails();
    ColumnValues ends = filled.results().column(slot(filled, "end").number());
    for (int chunk = 0; chunk < ColumnValues.chunkCount(ROWS); chunk++) {
      assertThat(ends.chunk(chunk)).isInstanceOf(LaneChunk.class);
    }
  }

  /** For each chunk of a column, whether an edit left the very same one. */
  private static boolean[] kept(Filled before, Filled after, String name) {
    int place = slot(before, name).number();
    boolean[] kept = new boolean[ColumnValues.chunkCount(ROWS)];
    for (int chunk = 0; chunk < kept.length; chunk++) {
      kept[chunk] = before.results().chunk(place, chunk) == after.results().chunk(place, chunk);
    }
    return kept;
  }

  private static Slot slot(Filled filled, String name) {
    return filled.results().program().slots().of(column(filled, name));
  }

  private static Column column(Filled filled, String name) {
    return requireNonNull(requireNonNull(filled.book().table("rails")).column(name));
  }
}
