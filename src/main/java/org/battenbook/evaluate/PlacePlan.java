package org.battenbook.evaluate;

import java.util.Map;
import java.util.Set;
import org.battenbook.bind.RowKeys;
import org.battenbook.book.Place;
import org.battenbook.check.CheckedPlace;
import org.battenbook.check.Need;
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
  private final int rowCount;
  private final LaneChunk.Reader reader;
  private final Written written;
  private final Set<Need> needs;
  private final long operations;
  private final long steps;

  /**
   * A plan.
   *
   * @param formula the plan of the formula that holds; absent for a given place without one
   * @param cellFormulas the plans of formulas that stand in single cells, by row
   * @param keys the row names of the table whose rows the place's values are, if they are rows
   */
  PlacePlan(
      Slot slot,
      CheckedPlace checked,
      @Nullable Plan formula,
      Map<Integer, Plan> cellFormulas,
      @Nullable RowKeys keys) {
    this.slot = slot;
    this.checked = checked;
    this.formula = formula;
    this.lanes = formula == null || !slot.isColumn() ? null : LaneCompiler.compile(formula);
    this.cellFormulas = cellFormulas;
    this.needs = checked.needs();
    this.rowCount = Program.rowCount(slot.place());
    this.reader = LaneChunk.Reader.of(checked.kind(), keys);
    this.written = new Written(checked.cells(), rowCount, reader);
    this.operations = checked.operations();
    this.steps = countSteps();
  }

  /** All that the place's values are worked out from. */
  Set<Need> needs() {
    return needs;
  }

  Place place() {
    return slot.place();
  }

  /** The operations of its formulas, functions written out. */
  long operations() {
    return operations;
  }

  /** The steps that it takes in a fill. */
  long steps() {
    return steps;
  }

  private long countSteps() {
    long own = formula == null ? 0 : formula.steps().of(rowCount);
    return own + cellFormulas.values().stream().mapToLong(plan -> plan.steps().of(1)).sum();
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
    return formula == null ? new Value.Waiting(slot.words(frame.row), false) : formula.run(frame);
  }

  /** The values of a chunk of rows. */
  Chunk chunk(Reading reading, int chunk) {
    Written.Part cells = written.part(chunk);
    if (cells.whole() != null) {
      return cells.whole();
    }
    Lane lane = cells.hasFormulas() ? null : lane(ChunkFrame.of(reading, chunk, rowCount), cells);
    return lane == null ? rowByRow(reading, chunk) : new LaneChunk(lane, reader);
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

  private Chunk rowByRow(Reading reading, int chunk) {
    Value[] values = new Value[ColumnValues.rowsIn(chunk, rowCount)];
    int first = chunk << ColumnValues.SHIFT;
    Frame frame = Frame.atRow(reading, first);
    for (int i = 0; i < values.length; i++) {
      frame.row = first + i;
      values[i] = value(frame);
    }
    return pack(values);
  }

  /** The values of a chunk as they are held: in a lane where there is one. */
  Chunk pack(Value[] values) {
    return LaneChunk.pack(values, reader);
  }
}
