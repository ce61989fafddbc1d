package org.battenbook.evaluate;

import static org.assertj.core.api.Assertions.assertThat;

import org.battenbook.bench.WideBook;
import org.battenbook.book.Loader;
import org.battenbook.book.Place;
import org.battenbook.check.CheckedPlace;
import org.battenbook.value.Value;
import org.battenbook.workbook.TextLoader;
import org.battenbook.workbook.Workbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What lanes give for a chunk is what the plan, the reference, gives row by row. */
class LanesEqualRowsTest {

  @ParameterizedTest
  @ValueSource(
      strings = {"workbooks/first-frame.batten", "workbooks/saltmarsh-ferry-museum.batten"})
  void shipped_workbooks_come_out_as_row_by_row(String job) throws Loader.Unreadable {
    assertThat(lanesChecked(Workbook.open(job))).isPositive();
  }

  /** The others hold a total or a selection that depends on the row, or a row above. */
  @ParameterizedTest
  @CsvSource({"workbooks/first-frame.batten, 70", "workbooks/saltmarsh-ferry-museum.batten, 65"})
  void lanes_answer_for_most_chunks_of_shipped_workbooks(String job, int percent)
      throws Loader.Unreadable {
    Results results = Workbook.open(job).fill().results();
    int workedOut = 0;
    int byLanes = 0;
    for (CheckedPlace checked : results.program().book().places()) {
      if (checked.place().table() != null && checked.formula() != null) {
        for (int chunk = 0; chunk < results.chunkCount(checked.place()); chunk++) {
          workedOut++;
          byLanes += answer(results, checked.place(), chunk) ? 1 : 0;
        }
      }
    }
    assertThat(workedOut).isPositive();
    assertThat(100 * byLanes / workedOut).isGreaterThanOrEqualTo(percent);
  }

  /** Whether the formula of a column, run in lanes, answers for a chunk. */
  private static boolean answer(Results results, Place place, int chunk) {
    FormulaNode formula = results.program().compiled(place).formula();
    ColumnKernel lanes = formula == null ? null : KernelCompiler.compile(formula);
    try {
      int rows = results.valueCount(place);
      return lanes != null && lanes.run(ChunkFrame.of(results, chunk, rows)) != null;
    } catch (ArithmeticException aRowHasNone) {
      return false;
    }
  }

  @Test
  void three_chunks_of_mixed_units_come_out_as_row_by_row() {
    int lanes = lanesChecked(TextLoader.of(WideBook.text(2100)).open());
    assertThat(lanes).as("chunks in lanes").isGreaterThanOrEqualTo(3 * WideBook.WORKED_OUT);
  }

  @Test
  void a_branch_not_taken_that_divides_by_zero_leaves_the_chunk_to_the_rows() {
    Workbook job =
        TextLoader.of(
                """
                workbook "t"
                page p
                  table t by k
                    given
                      k : text
                      w : length
                    worked out
                      share = if w = 0 in then 0 else 6 in / w
                  rows of t
                    k | w
                    "a" | 0 in
                    "b" | 3 in
                """)
            .open();
    assertThat(job.fill().find("share of a").exact()).isEqualTo("0");
    assertThat(job.fill().find("share of b").exact()).isEqualTo("2");
    lanesChecked(job);
  }

  /** Compares every cell with its plan run for its row; gives how many chunks were lanes. */
  private static int lanesChecked(Workbook job) {
    assertThat(job.hasFaults()).isFalse();
    Results results = job.fill().results();
    Program program = results.program();
    int lanes = 0;
    for (CheckedPlace checked : program.book().places()) {
      if (checked.place().table() != null) {
        Slot slot = program.slots().of(checked.place());
        for (int row = 0; row < results.valueCount(checked.place()); row++) {
          Value byRow = program.compiled(slot).value(Frame.atRow(results, row));
          assertThat(results.cell(slot.number(), row))
              .as(slot.words(row, results))
              .isEqualTo(byRow);
        }
        for (int chunk = 0; chunk < results.chunkCount(checked.place()); chunk++) {
          lanes += results.chunk(slot.number(), chunk) instanceof LaneChunk ? 1 : 0;
        }
      }
    }
    return lanes;
  }
}
