package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.battenbook.book.PlanTable;
import org.battenbook.bound.Bound;
import org.battenbook.evaluate.RowPlanner;
import org.battenbook.number.Rational;
import org.battenbook.source.Diagnostic;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A plan brings no more rows into a table than people may write there. */
class PlannedRowsBoundTest {
  private static final String JOB =
      """
      workbook "Job"
      page p
        table slats by slat
          given
            slat   : text
            length : length
            pieces : count
        table shop by stick
          given
            stick  : text
            length : length
        stick plan cutting
          parts of slats
            length   = length
            quantity = pieces
          stock of shop
            length = length
        rows of slats
          slat | length | pieces
          "a"  | 15 in  | 1
        rows of shop
          stick | length
          "b"   | 96 in
      """;

  /** The rows of a table whose cells are left empty but for their names. */
  private static List<List<@Nullable Value>> rows(int count, int cells) {
    return IntStream.range(0, count)
        .mapToObj(
            row -> {
              List<@Nullable Value> cellsOfRow = Arrays.asList(new Value[cells]);
              cellsOfRow.set(0, new Value.Text("r" + row));
              return Collections.unmodifiableList(cellsOfRow);
            })
        .toList();
  }

  @ParameterizedTest
  @CsvSource({"0, false", "1, true"})
  void one_row_too_many(int more, boolean isRefused) throws Exception {
    int count = Bound.TABLE_ROWS.most() + more;
    RowPlanner planner =
        (plan, results, hours) ->
            Optional.of(
                new RowPlanner.Planned(
                    Map.of(plan.table(PlanTable.STOPS), rows(count, 3)), Rational.ZERO));
    List<Diagnostic> told = Workbook.open("job.batten", TextLoader.of(JOB), planner).diagnostics();
    assertThat(told.stream().anyMatch(one -> one.code().equals("table-too-large")))
        .isEqualTo(isRefused);
  }
}
