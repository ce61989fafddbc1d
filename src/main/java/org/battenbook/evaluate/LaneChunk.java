package org.battenbook.evaluate;

import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import org.battenbook.bind.RowKeys;
import org.battenbook.column.BitLane;
import org.battenbook.column.IndexLane;
import org.battenbook.column.Lane;
import org.battenbook.column.NumberLane;
import org.battenbook.number.Real;
import org.battenbook.unit.Dimension;
import org.battenbook.unit.Quantity;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;
import org.battenbook.value.ValueVisitor;
import org.jspecify.annotations.Nullable;

/** A chunk whose every row is known, held in a lane. */
final class LaneChunk implements ColumnValues.Chunk {
  private final Lane lane;
  private final Reader reader;

  /** Makes values from what a lane holds. */
  record Reader(Dimension dimension, String table, @Nullable RowKeys keys) {

    /**
     * The reader of the lanes of a kind.
     *
     * @param keys the names of the rows that the values are; absent for other kinds
     */
    static Reader of(Kind kind, @Nullable RowKeys keys) {
      return new Reader(
          kind instanceof Kind.Measured measured ? measured.dimension() : Dimension.NONE,
          kind instanceof Kind.RowOf rowOf ? rowOf.table() : "",
          keys);
    }

    Value value(Lane lane, int row) {
      if (lane instanceof NumberLane numbers) {
        return new Value.Amount(new Quantity(numbers.at(row), dimension));
      }
      if (lane instanceof BitLane bits) {
        return new Value.YesNo(bits.at(row));
      }
      int named = ((IndexLane) lane).at(row);
      if (keys == null) {
        throw new IllegalStateException("rows of no table");
      }
      return new Value.Row(table, named, keys.name(named));
    }
  }

  LaneChunk(Lane lane, Reader reader) {
    this.lane = lane;
    this.reader = reader;
  }

  /**
   * Packs values into the lane of their kind; keeps objects where not all are known or no lane
   * fits.
   */
  static ColumnValues.Chunk pack(Value[] values, Reader reader) {
    Lane lane = lane(values);
    return lane == null ? new ValueChunk(values) : new LaneChunk(lane, reader);
  }

  /** The lane that holds these values, all of one kind; absent where none holds them all. */
  static @Nullable Lane lane(Value[] values) {
    for (Value value : values) {
      if (!value.isKnown()) {
        return null;
      }
    }
    return values.length == 0
        ? BitLane.of(0, row -> false)
        : values[0].accept(new Packing(values)).orElse(null);
  }

  /** Packs values of the kind of the first. */
  private static final class Packing implements ValueVisitor<Optional<Lane>> {
    private final Value[] values;

    Packing(Value[] values) {
      this.values = values;
    }

    @Override
    public Optional<Lane> amount(Value.Amount first) {
      return Optional.of(numbers(values));
    }

    @Override
    public Optional<Lane> text(Value.Text first) {
      return Optional.empty();
    }

    @Override
    public Optional<Lane> yesNo(Value.YesNo first) {
      return Optional.of(BitLane.of(values.length, row -> ((Value.YesNo) values[row]).yes()));
    }

    @Override
    public Optional<Lane> day(Value.Day first) {
      return Optional.empty();
    }

    @Override
    public Optional<Lane> row(Value.Row first) {
      return Optional.of(indices(values));
    }

    @Override
    public Optional<Lane> fault(Value.Fault first) {
      return Optional.empty();
    }

    @Override
    public Optional<Lane> waiting(Value.Waiting first) {
      return Optional.empty();
    }
  }

  private static IndexLane indices(Value[] values) {
    int[] rows = new int[values.length];
    for (int i = 0; i < rows.length; i++) {
      rows[i] = ((Value.Row) values[i]).row();
    }
    return new IndexLane(rows);
  }

  private static NumberLane numbers(Value[] values) {
    Real[] numbers = new Real[values.length];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = ((Value.Amount) values[i]).quantity().number();
    }
    return NumberLane.of(numbers);
  }

  Lane lane() {
    return lane;
  }

  @Override
  public Value value(int row) {
    return reader.value(lane, row);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof LaneChunk that
        && lane.equals(that.lane)
        && (!(lane instanceof IndexLane rows) || namesSame(rows, that));
  }

  /** Equal indices may be different rows, if rows moved. */
  private boolean namesSame(IndexLane rows, LaneChunk that) {
    RowKeys mine = Objects.requireNonNull(reader.keys());
    RowKeys others = Objects.requireNonNull(that.reader.keys());
    return mine == others
        || IntStream.range(0, rows.rows())
            .allMatch(i -> mine.name(rows.at(i)).equals(others.name(rows.at(i))));
  }

  @Override
  public int hashCode() {
    return lane.hashCode();
  }
}
