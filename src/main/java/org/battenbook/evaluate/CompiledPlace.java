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

/**
 * The compiled formulas of one place. They run chunk by chunk where kernels reach, else row by row.
 */
final class CompiledPlace {
  private final Slot slot;
  private final CheckedPlace checked;

  /** The formula before any check that its value is a count: what changes of cells inherit. */
  private final @Nullable FormulaNode unchecked;

  private final @Nullable FormulaNode formula;
  private final @Nullable ColumnKernel lanes;
  private final Program program;
  private final @Nullable Table namedRows;

  /** The cells of rows that are the same in every fill; absent until they are asked for. */
  private volatile @Nullable Written written;

  /** The formulas that stand in cells, compiled; rows may share one. */
  private final Map<OwnFormula, FormulaNode> ofCells = new ConcurrentHashMap<>();

  /**
   * A formula that stands in a cell.
   *
   * @param written the value that a change of the cell inherits; absent where none is written
   */
  private record OwnFormula(CheckedFormula formula, @Nullable Value written) {}

  /**
   * The compiled formulas of a place.
   *
   * @param formula the formula that holds; absent for a given place without one
   * @param program compiles the formulas that stand in single cells
   * @param namedRows the table whose rows the place's values are, if they are rows
   */
  CompiledPlace(
      Slot slot,
      CheckedPlace checked,
      @Nullable FormulaNode formula,
      Program program,
      @Nullable Table namedRows) {
    this.slot = slot;
    this.checked = checked;
    this.unchecked = formula;
    this.formula = formula == null ? null : counted(checked.formula(), formula);
    this.lanes =
        this.formula == null || !slot.isColumn() ? null : KernelCompiler.compile(this.formula);
    this.program = program;
    this.namedRows = namedRows;
  }

  Place place() {
    return slot.place();
  }

  Slot slot() {
    return slot;
  }

  /** The steps of a fill. */
  long steps(Results results) {
    long own = formula == null ? 0 : formula.steps(results).of(results.valueCount(place()));
    return own
        + cells(results).formulas().keySet().stream()
            .mapToLong(row -> node(row, cells(results)).steps(results).of(1))
            .sum();
  }

  private Cells cells(Reading reading) {
    return reading.decisions().cells(place());
  }

  @Nullable FormulaNode formula() {
    return formula;
  }

  /** The formula that stands in the own cell of a row; absent where none does. */
  @Nullable FormulaNode ownFormula(int row, Reading reading) {
    Cells cells = cells(reading);
    return cells.formulas().containsKey(row) ? node(row, cells) : null;
  }

  private FormulaNode node(int row, Cells cells) {
    CheckedFormula own = Objects.requireNonNull(cells.formulas().get(row));
    return ofCells.computeIfAbsent(new OwnFormula(own, cells.value(row)), this::compile);
  }

  private FormulaNode compile(OwnFormula own) {
    FormulaNode inherited =
        own.written() == null
            ? unchecked
            : new ConstantNode(own.formula().expression(), own.written());
    return counted(own.formula(), program.compileCell(own.formula(), inherited));
  }

  private FormulaNode counted(@Nullable CheckedFormula of, FormulaNode node) {
    return FormulaCompiler.counted(place(), Objects.requireNonNull(of), node);
  }

  /** The value in one row (0 for a line): the row's own, or the formula's. */
  Value value(Frame frame) {
    return value(frame, cells(frame.reading));
  }

  private Value value(Frame frame, Cells cells) {
    if (cells.formulas().containsKey(frame.row)) {
      return node(frame.row, cells).run(frame);
    }
    Value cell = cells.value(frame.row);
    return cell == null ? byFormula(frame) : cell;
  }

  private Value byFormula(Frame frame) {
    return formula == null
        ? new Value.Waiting(slot.words(frame.row, frame.reading), false)
        : formula.run(frame);
  }

  /** The cells of its column, for the rows that there are. */
  Written written(Reading reading) {
    if (!hasFixedRows()) {
      return made(reading);
    }
    Written known = written;
    if (known == null) {
      known = made(reading);
      written = known;
    }
    return known;
  }

  private Written made(Reading reading) {
    return new Written(cells(reading), reading.rows(table()).count(), reader(reading));
  }

  /** Whether people write the rows, and the rows that are named: then no fill has others. */
  private boolean hasFixedRows() {
    return table().isWritten() && (namedRows == null || namedRows.isWritten());
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
          ? KernelCompiler.either(cells.rows(), cells.values(), worked)
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

  /** Packs the values of a chunk: into a lane where one fits. */
  Chunk pack(Value[] values, Reading reading) {
    return LaneChunk.pack(values, reader(reading));
  }
}
