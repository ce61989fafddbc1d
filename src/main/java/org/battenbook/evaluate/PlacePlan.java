package org.battenbook.evaluate;

import java.util.Map;
import org.battenbook.bind.BookRows;
import org.battenbook.book.Column;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.check.CheckedPlace;
import org.battenbook.column.Lane;
import org.battenbook.evaluate.ColumnValues.Chunk;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** How the values of one place are worked out: row by row, and by chunks where lanes reach. */
final class PlacePlan {
  private final Slot slot;
  private final CheckedPlace checked;
  private final @Nullable Plan formula;
  private final @Nullable LanePlan lanes;
  private final Map<Integer, Plan> cellFormulas;
  private final @Nullable Table namedRows;
  private final long operations;

  /**
   * A plan.
   *
   * @param formula the plan of the formula that holds; absent for a given place without one
   * @param cellFormulas the plans of formulas that stand in single cells, by row
   * @param namedRows the table whose rows the place's values are, if they are rows
   */
  PlacePlan(
      Slot slot,
      CheckedPlace checked,
      @Nullable Plan formula,
      Map<Integer, Plan> cellFormulas,
      @Nullable Table namedRows) {
    this.slot = slot;
    this.checked = checked;
    this.formula = formula;
    this.lanes = formula == null || !slot.isColumn() ? null : LaneCompiler.compile(formula);
    this.cellFormulas = cellFormulas;
    this.namedRows = namedRows;
    this.operations = checked.operations();
  }

  Place place() {
    return slot.place();
  }

  Slot slot() {
    return slot;
  }

  /** The operations of its formulas, functions written out. */
  long operations() {
    return operations;
  }

  /** The steps that it takes in a fill. */
  long steps(BookRows rows) {
    int count = place() instanceof Column column ? rows.rows(column.table()).count() : 1;
    long own = formula == null ? 0 : formula.steps(rows).of(count);
    return own + cellFormulas.values().stream().mapToLong(plan -> plan.steps(rows).of(1)).sum();
  }

  @Nullable Plan formula() {
    return formula;
  }

  /** The plan of the formula that stands in a row's own cell; absent where none does. */
  @Nullable Plan ownFormula(int row) {
    return cellFormulas.get(row);
  }

  /** The value in one row (0 for a line): the row's own, or the formula's. */
  Value value(Frame frame) {
    Plan own = cellFormulas.get(frame.row);
    if (own != null) {
      return own.run(frame);
    }
    Value cell = checked.cells().value(frame.row);
    return cell == null ? byFormula(frame) : cell;
  }

  private Value byFormula(Frame frame) {
    return formula == null
        ? new Value.Waiting(slot.words(frame.row, frame.reading), false)
        : formula.run(frame);
  }

  /** What rows say of it, in the rows that there are. */
  Written written(Reading reading) {
    return new Written(checked.cells(), reading.rows(table()).count(), reader(reading));
  }

  private Table table() {
    return ((Column) place()).table();
  }

  private LaneChunk.Reader reader(Reading reading) {
    return LaneChunk.Reader.of(
        checked.kind(), namedRows == null ? null : reading.rows(namedRows).keys());
  }

  /** The values of a chunk of rows. */
  Chunk chunk(Reading reading, int chunk) {
    Written.Part cells = reading.written(this).part(chunk);
    if (cells.whole() != null) {
      return cells.whole();
    }
    int count = reading.rows(table()).count();
    Lane lane = cells.hasFormulas() ? null : lane(ChunkFrame.of(reading, chunk, count), cells);
    return lane == null ? rowByRow(reading, chunk, count) : new LaneChunk(lane, reader(reading));
  }

  private @Nullable Lane lane(ChunkFrame frame, Written.Part cells) {
    if (lanes == null) {
      return null;
    }
    try {
      Lane worked = lanes.run(frame);
      return cells.rows().isAny()
          ? LaneCompiler.either(cells.rows(), cells.values(), worked)
          : worked;
    } catch (ArithmeticException aRowHasNone) {
      return null;
    }
  }

  private Chunk rowByRow(Reading reading, int chunk, int count) {
    Value[] values = new Value[ColumnValues.rowsIn(chunk, count)];
    int first = chunk << ColumnValues.SHIFT;
    Frame frame = Frame.atRow(reading, first);
    for (int i = 0; i < values.length; i++) {
      frame.row = first + i;
      values[i] = value(frame);
    }
    return pack(values, reading);
  }

  /** The values of a chunk as they are held: in a lane where there is one. */
  Chunk pack(Value[] values, Reading reading) {
    return LaneChunk.pack(values, reader(reading));
  }
}
