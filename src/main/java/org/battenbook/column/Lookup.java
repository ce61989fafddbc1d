package org.battenbook.column;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.jspecify.annotations.Nullable;

/**
 * A column of numbers made ready to be looked up by row: {@code moulding.face} for every piece.
 * Rows that name none read as zero.
 */
public final class Lookup {
  private final @Nullable LongLane longs;
  private final Real[] reals;

  /** Lays the column out in one piece, in longs if all chunks fit a common tick. */
  public Lookup(Column<NumberLane> column) {
    this.longs = inOnePiece(column);
    this.reals = longs == null ? realsOf(column) : new Real[0];
  }

  private static @Nullable LongLane inOnePiece(Column<NumberLane> column) {
    LongLane whole = new LongLane(new long[0], Rational.ONE, 0);
    for (NumberLane chunk : column.chunks()) {
      LongLane next = chunk.asLongs();
      LongLane joined = next == null ? null : joined(whole, next);
      if (joined == null) {
        return null;
      }
      whole = joined;
    }
    return whole;
  }

  private static @Nullable LongLane joined(LongLane first, LongLane second) {
    CommonTick common = CommonTick.of(first, second);
    LongLane left = common == null ? null : first.inTick(common.tick(), common.left());
    LongLane right = common == null ? null : second.inTick(common.tick(), common.right());
    if (common == null || left == null || right == null) {
      return null;
    }
    long[] ticks = Arrays.copyOf(left.ticks, left.ticks.length + right.ticks.length);
    System.arraycopy(right.ticks, 0, ticks, left.ticks.length, right.ticks.length);
    return new LongLane(ticks, common.tick(), Math.max(left.most, right.most));
  }

  private static Real[] realsOf(Column<NumberLane> column) {
    List<Real> reals = new ArrayList<>();
    column.chunks().forEach(chunk -> reals.addAll(List.of(chunk.reals())));
    return reals.toArray(Real[]::new);
  }

  /** The numbers of the rows named. */
  public NumberLane at(IndexLane rows) {
    return longs == null ? realsAt(rows) : longsAt(longs, rows);
  }

  private static LongLane longsAt(LongLane source, IndexLane rows) {
    long[] ticks = new long[rows.rows()];
    for (int row = 0; row < ticks.length; row++) {
      int index = rows.at(row);
      ticks[row] = index < 0 ? 0 : source.ticks[index];
    }
    return new LongLane(ticks, source.tick(), source.most);
  }

  private NumberLane realsAt(IndexLane rows) {
    Real[] numbers = new Real[rows.rows()];
    for (int row = 0; row < numbers.length; row++) {
      int index = rows.at(row);
      numbers[row] = index < 0 ? Rational.ZERO : reals[index];
    }
    return NumberLane.of(numbers);
  }
}
