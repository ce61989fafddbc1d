package org.battenbook.column;

import java.util.ArrayList;
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
    LongLane common = new LongLane(new long[0], Rational.ONE, 0);
    List<LongLane> parts = new ArrayList<>();
    for (NumberLane chunk : column.chunks()) {
      LongLane longs = chunk.asLongs();
      CommonTick tick = longs == null ? null : CommonTick.of(common, longs);
      if (longs == null || tick == null) {
        return null;
      }
      common = new LongLane(common.ticks, tick.tick(), Math.max(common.most, longs.most));
      parts.add(longs);
    }
    return joined(parts, common, column.rows());
  }

  private static @Nullable LongLane joined(List<LongLane> parts, LongLane common, int rows) {
    long[] ticks = new long[rows];
    long most = 0;
    int row = 0;
    for (LongLane part : parts) {
      CommonTick tick = CommonTick.of(common, part);
      LongLane same = tick == null ? null : part.inTick(common.tick(), tick.right());
      if (same == null) {
        return null;
      }
      System.arraycopy(same.ticks, 0, ticks, row, same.ticks.length);
      most = Math.max(most, same.most);
      row += same.ticks.length;
    }
    return new LongLane(ticks, common.tick(), most);
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
