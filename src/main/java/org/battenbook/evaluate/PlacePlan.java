package org.battenbook.evaluate;

import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.check.Cells;
import org.battenbook.check.CheckedFormula;
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
  private final Program program;
  private final @Nullable Table namedRows;

  /** The plans of formulas that stand in cells; rows may share one. */
  private final Map<OwnFormula, Plan> cellPlans = new ConcurrentHashMap<>();

  /**
   * A formula that stands in a cell.
   *
   * @param written the value that a change of the cell inherits; absent where none is written
   */
  private record OwnFormula(CheckedFormula formula, @Nullable Value written) {}

  /**
   * A plan.
   *
   * @param formula the plan of the formula that holds; absent for a given place without one
   * @param program compiles the formulas that stand in single cells
   * @param namedRows the table whose rows the place's values are, if they are rows
   */
  PlacePlan(
      Slot slot,
      CheckedPlace checked,
      @Nullable Plan formula,
      Program program,
      @Nullable Table namedRows) {
    this.slot = slot;
    this.checked = checked;
    this.formula = formula;
    this.lanes = formula == null || !slot.isColumn() ? null : LaneCompiler.compile(formula);
    this.program = program;
    this.namedRows = namedRows;
  }

  Place place() {
    return slot.place();
  }

  Slot slot() {
    return slot;
  }

  /** The steps that it takes in a fill. */
  long steps(Results results) {
    long own = formula == null ? 0 : formula.steps(results).of(results.valueCount(place()));
    return own
        + cells(results).formulas().keySet().stream()
            .mapToLong(row -> plan(row, cells(results)).steps(results).of(1))
            .sum();
  }

  private Cells cells(Reading reading) {
    return reading.decisions().cells(place());
  }

  @Nullable Plan formula() {
    return formula;
  }

  /** The plan of the formula that stands in a row's own cell; absent where none does. */
  @Nullable Plan ownFormula(int row, Reading reading) {
    Cells cells = cells(reading);
    return cells.formulas().containsKey(row) ? plan(row, cells) : null;
  }

  private Plan plan(int row, Cells cells) {
    CheckedFormula own = Objects.requireNonNull(cells.formulas().get(row));
    return cellPlans.computeIfAbsent(new OwnFormula(own, cells.value(row)), this::compile);
  }

  private Plan compile(OwnFormula own) {
    Plan inherited =
        own.written() == null
            ? formula
            : new ConstantPlan(own.formula().expression(), own.written());
    return program.compileCell(own.formula(), inherited);
  }

  /** The value in one row (0 for a line): the row's own, or the formula's. */
  Value value(Frame frame) {
    return value(frame, cells(frame.reading));
  }

  private Value value(Frame frame, Cells cells) {
    if (cells.formulas().containsKey(frame.row)) {
      return plan(frame.row, cells).run(frame);
    }
    Value cell = cells.value(frame.row);
    return cell == null ? byFormula(frame) : cell;
  }

  private Value byFormula(Frame frame) {
    return formula == null
        ? new Value.Waiting(slot.words(frame.row, frame.reading), false)
        : formula.run(frame);
  }

  /** What rows say of it, in the rows that there are. */
  Written written(Reading reading) {
    return new Written(cells(reading), reading.rows(table()).count(), reader(reading));
  }

  private Table table() {
    return Objects.requireNonNull(place().table());
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
    Cells cells = cells(reading);
    for (int i = 0; i < values.length; i++) {
      frame.row = first + i;
      values[i] = value(frame, cells);
    }
    return pack(values, reading);
  }

  /** The values of a chunk as they are held: in a lane where there is one. */
  Chunk pack(Value[] values, Reading reading) {
    return LaneChunk.pack(values, reader(reading));
  }
}
