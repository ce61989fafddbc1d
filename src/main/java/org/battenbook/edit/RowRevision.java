package org.battenbook.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import org.battenbook.bind.Rows;
import org.battenbook.book.Column;
import org.battenbook.book.RowOpening;
import org.battenbook.book.RowSegment;
import org.battenbook.book.Table;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.Change;
import org.battenbook.syntax.RowsSection;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** The rows of a workbook's files with other cells, and with rows added, moved and removed. */
final class RowRevision {
  private final BookRevision revision;
  private final Map<RowsSection, BlockRevision> blocks = new LinkedHashMap<>();
  private final Map<NewBlock, List<Map<Column, String>>> newBlocks = new LinkedHashMap<>();

  /** The cells to fill in of opened rows that no file fills in yet. */
  private final Map<Table, Map<Integer, Map<Column, String>>> fillIns = new LinkedHashMap<>();

  /**
   * A block of rows with headings of its own.
   *
   * @param below the block that it stands below; absent for one at the end of the job
   */
  private record NewBlock(Table table, @Nullable RowsSection below) {}

  RowRevision(BookRevision revision) {
    this.revision = revision;
  }

  private Rows rowsOf(Table table) {
    return revision.rowsOf(table);
  }

  void writeInto() throws EditRefused {
    addFillIns();
    blocks.forEach((section, block) -> block.writeInto(revision.edits(section.span().source())));
    newBlocks.forEach(this::write);
  }

  private void addFillIns() throws EditRefused {
    for (Map.Entry<Table, Map<Integer, Map<Column, String>>> table : fillIns.entrySet()) {
      for (Map<Column, String> row : table.getValue().values()) {
        addRow(table.getKey(), row);
      }
    }
    fillIns.clear();
  }

  private void write(NewBlock block, List<Map<Column, String>> rows) {
    RowsSection below = block.below();
    if (below == null) {
      TextEdits edit = revision.edits(revision.book().source());
      edit.append("");
      edit.append("page " + block.table().page().name());
      RowLines.block("  ", block.table(), rows).forEach(edit::append);
      return;
    }
    TextEdits edit = revision.edits(below.span().source());
    int last = BlockRevision.lastOffset(below);
    edit.insertLineBelow(last, "");
    String indentation = RowLines.indentation(below.span().start(), below.span().source());
    RowLines.block(indentation, block.table(), rows)
        .forEach(line -> edit.insertLineBelow(last, line));
  }

  /**
   * Sets the cell of a row, in the file that has it. A row that is opened from another table is
   * filled in.
   *
   * @param entry as it stands in the file; empty to leave the cell to its column
   */
  void setCell(Column column, int row, String entry) throws EditRefused {
    refuseComing(column);
    Optional<Change> change = revision.statements().changeOf(column, row);
    if (change.isPresent()) {
      revision.statements().setChanged(change.get(), entry);
      return;
    }
    RowSegment holds = holding(column, row);
    if (holds != null) {
      block(column.table(), holds).set(rowsOf(column.table()).at(holds, row), column, entry);
    } else if (!entry.isEmpty()) {
      fillIn(column, row, entry);
    }
  }

  /**
   * The row in which people write a cell, or would write it; empty where an edit of the cell writes
   * something else, or is refused.
   */
  Optional<Span> rowOf(Column column, int row) {
    RowSegment holds =
        column.comesWithRow() || revision.statements().changeOf(column, row).isPresent()
            ? null
            : holding(column, row);
    return holds == null || holds.written() == null
        ? Optional.empty()
        : Optional.of(holds.cells().span(rowsOf(column.table()).at(holds, row), 0));
  }

  static void refuseComing(Column column) throws EditRefused {
    if (column.comesWithRow()) {
      throw new EditRefused(
          "edit-of-coming-cell",
          "'%s' is set with the rows of '%s'".formatted(column.name(), column.table()),
          column.isPlanned()
              ? "change the parts or the stock of the plan"
              : "change the table that the rows come from");
    }
  }

  /**
   * The segment whose cell decides a row; else the one in which the row is written or filled in;
   * absent for a row that nobody writes.
   */
  private @Nullable RowSegment holding(Column column, int row) {
    Rows rows = rowsOf(column.table());
    RowSegment says = null;
    RowSegment there = null;
    for (RowSegment segment : column.table().segments()) {
      int at = rows.at(segment, row);
      there = at == Rows.NO_ROW ? there : segment;
      says = at != Rows.NO_ROW && segment.cell(column, at).isPresent() ? segment : says;
    }
    return says == null ? there : says;
  }

  /** The block of rows that a segment is. */
  BlockRevision block(Table table, RowSegment segment) throws EditRefused {
    RowsSection section = segment.written();
    if (section == null) {
      throw new EditRefused(
          "edit-of-list",
          "this row of '%s' is in the list '%s'".formatted(table, segment.cells().source().name()),
          "change it there, or write it under 'rows of %s' in a workbook".formatted(table));
    }
    return blocks.computeIfAbsent(section, s -> new BlockRevision(s, segment.columns()));
  }

  /** Fills in a cell of an opened row that no file fills in yet. */
  private void fillIn(Column column, int row, String entry) throws EditRefused {
    Table table = column.table();
    Map<Integer, Map<Column, String>> ofTable =
        fillIns.computeIfAbsent(table, t -> new LinkedHashMap<>());
    if (!ofTable.containsKey(row)) {
      ofTable.put(row, address(table, row));
    }
    Objects.requireNonNull(ofTable.get(row)).put(column, entry);
  }

  /** The cells that say which opened row is filled in. */
  private Map<Column, String> address(Table table, int row) throws EditRefused {
    RowOpening opening =
        rowsOf(table)
            .opening(row)
            .orElseThrow(
                () ->
                    new EditRefused(
                        "edit-of-plan", "this row of '%s' comes from a plan".formatted(table), ""));
    Map<Column, String> cells = new LinkedHashMap<>();
    cells.put(opening.each(), text(rowsOf(table).brought(opening.each(), row)));
    if (opening.count() != null) {
      Column number = opening.count().number();
      cells.put(number, text(rowsOf(table).brought(number, row)));
    }
    return cells;
  }

  /** How an opened cell is written: the row that opens it by its name, or a number. */
  private static String text(@Nullable Value brought) {
    return brought instanceof Value.Row row
        ? TypedText.quoted(row.name())
        : ((Value.Amount) Objects.requireNonNull(brought)).quantity().number().toString();
  }

  /**
   * Adds a row where the nearest file has rows of a table: behind the last block with all of its
   * columns, or in a block of its own below the last one. Where no file has rows, it goes to the
   * end of the job.
   *
   * @return the file
   */
  SourceText addRow(Table table, Map<Column, String> cells) throws EditRefused {
    return addRow(table, cells, segment -> true);
  }

  /** Adds a row to the job itself. */
  SourceText addRowToJob(Table table, Map<Column, String> cells) throws EditRefused {
    return addRow(table, cells, segment -> segment.statedIn() == revision.book().source());
  }

  private SourceText addRow(Table table, Map<Column, String> cells, Predicate<RowSegment> mayStand)
      throws EditRefused {
    List<RowSegment> written =
        table.segments().stream().filter(s -> s.written() != null && mayStand.test(s)).toList();
    RowSegment last = written.isEmpty() ? null : written.get(written.size() - 1);
    BlockRevision fits = null;
    for (RowSegment segment : written) {
      boolean isNear = last != null && segment.statedIn() == last.statedIn();
      boolean names = isNear && block(table, segment).names(cells.keySet());
      fits = names ? block(table, segment) : fits;
    }
    if (fits == null) {
      newBlocks
          .computeIfAbsent(
              new NewBlock(table, last == null ? null : last.written()), b -> new ArrayList<>())
          .add(cells);
    } else {
      fits.insert(fits.rowCount(), cells);
    }
    return last == null ? revision.book().source() : last.statedIn();
  }

  /**
   * The block in which people write a row, and its place there.
   *
   * @throws EditRefused where nobody writes it
   */
  WrittenRow written(Table table, int row) throws EditRefused {
    if (table.plan() != null) {
      throw new EditRefused(
          "edit-of-plan",
          "the rows of '%s' come from the plan '%s'".formatted(table, table.plan().name()),
          "change the plan, its parts or its stock instead");
    }
    Optional<RowOpening> opening = rowsOf(table).opening(row);
    if (opening.isPresent()) {
      throw new EditRefused(
          "edit-of-opened-row",
          "the row \"%s\" of '%s' comes from '%s'"
              .formatted(rowsOf(table).name(row), table, opening.get().from()),
          opening.get().count() == null
              ? "add or remove a row of '%s'".formatted(opening.get().from())
              : "change '%s' of '%s'"
                  .formatted(opening.get().count().upTo().name(), opening.get().from()));
    }
    for (RowSegment segment : table.rows()) {
      if (segment.brings(row)) {
        return new WrittenRow(block(table, segment), segment, row - segment.firstRow());
      }
    }
    throw new EditRefused("no-such-row", "'%s' has no such row".formatted(table), "");
  }

  /**
   * A row where people write it.
   *
   * @param at its place in the block, counted from 0
   */
  record WrittenRow(BlockRevision block, RowSegment segment, int at) {
    /** Its cells as they stand; those that are empty are left out. */
    Map<Column, String> cells() {
      Map<Column, String> cells = new LinkedHashMap<>();
      for (Column column : segment.columns()) {
        String cell = block.cell(at, column);
        if (!cell.isEmpty()) {
          cells.put(column, cell);
        }
      }
      return cells;
    }
  }

  /**
   * The text of the cell that people write for a row.
   *
   * @return empty where the row leaves the cell to its column
   * @throws EditRefused where nobody writes the row
   */
  String cellText(Column column, int row) throws EditRefused {
    WrittenRow written = written(column.table(), row);
    return written.block().cell(written.at(), column);
  }

  /**
   * Sets the cell of a row where people write it, whatever changes say of it.
   *
   * @throws EditRefused where nobody writes the row
   */
  void setWrittenCell(Column column, int row, String entry) throws EditRefused {
    WrittenRow written = written(column.table(), row);
    written.block().set(written.at(), column, entry);
  }
}
