package org.battenbook.column;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.junit.jupiter.api.Test;

class ColumnTest {
  private static List<Real> numbers(int count) {
    return IntStream.range(0, count).<Real>mapToObj(row -> Rational.of(row, 16)).toList();
  }

  @Test
  void rows_are_held_in_chunks_of_1024() {
    Column<NumberLane> column = Column.of(numbers(2_500));
    assertThat(column.chunks()).extracting(Lane::rows).containsExactly(1024, 1024, 452);
    assertThat(column.rows()).isEqualTo(2_500);
    assertThat(Column.chunksFor(2_500)).isEqualTo(3);
    assertThat(Column.chunksFor(2_048)).isEqualTo(2);
    assertThat(column.chunkOf(2_049).at(2_049 % Lane.CHUNK)).isEqualTo(Rational.of(2_049, 16));
    assertThat(Column.of(List.of()).rows()).isZero();
  }

  @Test
  void all_chunks_have_one_tick() {
    List<Real> numbers = new ArrayList<>(numbers(2_000));
    numbers.set(1_999, Rational.of(1, 127));
    assertThat(Column.of(numbers).chunks())
        .allSatisfy(
            chunk -> assertThat(((LongLane) chunk).tick()).isEqualTo(Rational.of(1, 2_032)));
  }

  @Test
  void an_edit_shares_the_other_chunks() {
    Column<NumberLane> column = Column.of(numbers(2_000));
    Column<NumberLane> edited = column.with(1, column.chunks().get(1).with(3, Rational.of(7)));
    assertThat(edited.chunks().get(0)).isSameAs(column.chunks().get(0));
    assertThat(edited.chunkOf(1_027).at(3)).isEqualTo(Rational.of(7));
    assertThat(column.chunkOf(1_027).at(3)).isEqualTo(Rational.of(1_027, 16));
  }

  @Test
  void indices_compare_and_are_chosen_by_row() {
    IndexLane a = new IndexLane(new int[] {0, 1, IndexLane.NONE});
    IndexLane b = new IndexLane(new int[] {0, 2, IndexLane.NONE});
    BitLane same = BitLane.of(3, row -> row != 1);
    assertThat(a.equalTo(b)).isEqualTo(same);
    assertThat(a.equalTo(1)).isEqualTo(same.not());
    assertThat(a.orElse(same, b)).isEqualTo(b).isNotEqualTo(a);
    assertThat(a.at(2)).isEqualTo(IndexLane.NONE);
  }
}
