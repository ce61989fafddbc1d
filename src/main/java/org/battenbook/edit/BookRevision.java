package org.battenbook.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import org.battenbook.book.Book;
import org.battenbook.book.Column;
import org.battenbook.book.FollowedFiles;
import org.battenbook.book.Layer;
import org.battenbook.book.Page;
import org.battenbook.book.Place;
import org.battenbook.book.RowOpening;
import org.battenbook.book.RowSegment;
import org.battenbook.book.Table;
import org.battenbook.parse.Notes;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.Change;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.Name;
import org.battenbook.syntax.PageSection;
import org.battenbook.syntax.Quoted;
import org.battenbook.syntax.RowsSection;
import org.battenbook.syntax.ShownAs;
import org.battenbook.syntax.WorkbookFile;
import org.jspecify.annotations.Nullable;

/**
 * The files of a workbook with edits in their texts. Each edit goes to the file that owns what it
 * changes; all that no edit names stays as it is, to the byte.
 */
public final class BookRevision {
  private final Book book;
  private final FollowedFiles files;
  private final RowNames names;
  private final Map<SourceText, TextEdits> edits = new LinkedHashMap<>();
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

  /** What the rows of a table are called. */
  @FunctionalInterface
  public interface RowNames {
    String name(Table table, int row);
  }

  /**
   * A book without edits yet.
   *
   * @param files that the book was put together from
   */
  public BookRevision(Book book, FollowedFiles files, RowNames names) {
    this.book = book;
    this.files = files;
    this.names = names;
  }

  /** The new text of each file that changes, by its name. */
  public Map<String, String> texts() throws EditRefused {
    addFillIns();
    blocks.forEach((section, block) -> block.writeInto(edits(section.span().source())));
    newBlocks.forEach(this::write);
    Map<String, String> texts = new LinkedHashMap<>();
    edits.forEach((source, edit) -> texts.put(source.name(), edit.text()));
    return texts;
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
      TextEdits edit = edits(book.source());
      edit.append("");
      edit.append("page " + block.table().page().name());
      RowLines.block("  ", block.table(), rows).forEach(edit::append);
      return;
    }
    TextEdits edit = edits(below.span().source());
    int last = BlockRevision.lastOffset(below);
    edit.insertLineBelow(last, "");
    String indentation = RowLines.indentation(below.span().start(), below.span().source());
    RowLines.block(indentation, block.table(), rows)
        .forEach(line -> edit.insertLineBelow(last, line));
  }

  Book book() {
    return book;
  }

  /** The job as it is written. */
  WorkbookFile job() {
    return files.job();
  }

  String name(Table table, int row) {
    return names.name(table, row);
  }

  TextEdits edits(SourceText source) {
    return edits.computeIfAbsent(source, TextEdits::new);
  }

  /** Whether people write a text themselves; other texts stand for lists, plans, opened rows. */
  private boolean isWritten(SourceText source) {
    return files.inOrder().stream().anyMatch(file -> file.source() == source);
  }

  /**
   * Replaces the formula that decides a place, in the file that has it. A {@code shown as} stays
   * unless the new formula brings its own.
   */
  void setFormula(Place place, String formula) throws EditRefused {
    if (place instanceof Column column) {
      refuseComing(column);
    }
    Layer layer = place.layer();
    if (!isWritten(layer.span().source())) {
      throw new EditRefused(
          "edit-of-plan",
          "'%s' comes with its plan".formatted(place.words()),
          "change the plan, its parts or its stock instead");
    }
    if (layer.formula() != null) {
      replace(layer.formula(), formula);
    } else if (place instanceof Column || layer.span().source() == book.source()) {
      edits(layer.span().source()).insert(layer.span().end(), " = " + formula);
    } else {
      insertOnPage(place.page(), place.name() + " = " + formula);
    }
  }

  private void replace(Formula old, String formula) throws EditRefused {
    Span replaced = TypedText.namesForm(formula) ? old.span() : old.valueSpan();
    if (Notes.isIn(replaced)) {
      throw new EditRefused(
          "edit-of-noted-formula",
          "a note stands between the lines of this formula, and it would be lost",
          "move the note behind the formula in the file, then edit it");
    }
    edits(replaced.source()).replace(replaced, formula);
  }

  /** Inserts a statement under the head of a page of the job; a page it has not, is begun. */
  void insertOnPage(Page page, String statement) {
    Optional<PageSection> section =
        job().pages().stream().filter(p -> p.name().key().equals(page.name().key())).findFirst();
    TextEdits edit = edits(book.source());
    if (section.isEmpty()) {
      edit.append("");
      edit.append("page " + page.name());
      edit.append("  " + statement);
    } else {
      Span head = section.get().name().span();
      String indentation = RowLines.indentation(statementStart(head), head.source());
      edit.insertLineBelow(head.start(), indentation + "  " + statement);
    }
  }

  private static int statementStart(Span span) {
    SourceText source = span.source();
    int start = source.lineStart(span.line());
    while (Character.isWhitespace(source.text().charAt(start))) {
      start++;
    }
    return start;
  }

  /** Removes the lines of a statement, with its note. */
  void removeStatement(Span statement) {
    SourceText source = statement.source();
    edits(source).removeLines(source.line(statement.start()), source.line(statement.end()));
  }

  /**
   * Sets the cell of a row, in the file that has it. A row that is opened from another table is
   * filled in.
   *
   * @param entry as it stands in the file; empty to leave the cell to its column
   */
  void setCell(Column column, int row, String entry) throws EditRefused {
    refuseComing(column);
    Optional<Change> change = changeOf(column, row);
    if (change.isPresent()) {
      setChanged(change.get(), entry);
      return;
    }
    RowSegment holds = holding(column, row);
    if (holds != null) {
      block(column.table(), holds).set(holds.at(row), column, entry);
    } else if (!entry.isEmpty()) {
      fillIn(column, row, entry);
    }
  }

  /**
   * The row in which people write a cell, or would write it; empty where an edit of the cell writes
   * something else, or is refused.
   */
  public Optional<Span> rowOf(Column column, int row) {
    RowSegment holds =
        column.comesWithRow() || changeOf(column, row).isPresent() ? null : holding(column, row);
    return holds == null || holds.written() == null
        ? Optional.empty()
        : Optional.of(holds.cells().span(holds.at(row), 0));
  }

  private static void refuseComing(Column column) throws EditRefused {
    if (column.comesWithRow()) {
      throw new EditRefused(
          "edit-of-coming-cell",
          "'%s' comes with the rows of '%s'".formatted(column.name(), column.table()),
          column.isPlanned()
              ? "change what is planned: its parts or its stock"
              : "change the table that the rows are opened from");
    }
  }

  /** The change that sets a cell; the last one where several files have one. */
  private Optional<Change> changeOf(Column column, int row) {
    String name = names.name(column.table(), row);
    return column.cellChanges().stream()
        .filter(change -> change.row() != null && TypedText.sameName(change.row().text(), name))
        .reduce((earlier, later) -> later);
  }

  private void setChanged(Change change, String entry) throws EditRefused {
    if (entry.isEmpty()) {
      removeStatement(change.span());
    } else {
      replace(change.formula(), entry);
    }
  }

  /** Writes a change into the job: in the one that is there, or else in a new one. */
  void change(ChangeEdit edit) throws EditRefused {
    Optional<Written> there = changeInJob(edit.place(), edit.row());
    if (there.isPresent()) {
      replace(there.get().formula(), edit.formula().strip());
      if (edit.because() != null) {
        edits(book.source())
            .replace(there.get().because().span(), TypedText.quoted(edit.because()));
      }
      return;
    }
    if (edit.because() == null) {
      throw new EditRefused(
          "change-without-reason",
          "a change of '%s' says why".formatted(edit.place().words()),
          "give a reason, such as \"the panels run thick\"");
    }
    if (edit.place().origin().source() == book.source()) {
      throw new EditRefused(
          "edit-of-own-line",
          "'%s' stands in the job itself".formatted(edit.place().words()),
          "set its formula; only what is inherited is changed with a reason");
    }
    insertChange(
        "change %s = %s because %s"
            .formatted(
                edit.target(this), edit.formula().strip(), TypedText.quoted(edit.because())));
  }

  /** A change as it is written. */
  private record Written(Span span, Formula formula, Quoted because) {}

  private Optional<Written> changeInJob(Place place, int row) {
    if (place instanceof Column column && row >= 0) {
      return changeOf(column, row)
          .filter(change -> change.span().source() == book.source())
          .map(change -> new Written(change.span(), change.formula(), change.because()));
    }
    Layer layer = place.layer();
    return layer.because() == null
            || layer.formula() == null
            || layer.span().source() != book.source()
        ? Optional.empty()
        : Optional.of(new Written(layer.span(), layer.formula(), layer.because()));
  }

  /** Takes a change out of the job. */
  void removeChange(Place place, int row) throws EditRefused {
    Written there =
        changeInJob(place, row)
            .orElseThrow(
                () ->
                    new EditRefused(
                        "no-change-here",
                        "the job does not change '%s'".formatted(place.words()),
                        "take it back in the file that does"));
    removeStatement(there.span());
  }

  /** Inserts a change below the last one of the job, or below its head. */
  private void insertChange(String statement) {
    WorkbookFile job = job();
    Span last = null;
    for (Change change : job.changes()) {
      last = later(last, change.span());
    }
    if (last == null) {
      for (Span head : headOf(job)) {
        last = later(last, head);
      }
    }
    TextEdits edit = edits(book.source());
    if (last == null) {
      edit.insert(0, statement + "\n");
    } else {
      edit.insertLineBelow(last.end(), statement);
    }
  }

  private static Span later(@Nullable Span one, Span other) {
    return one == null || other.end() > one.end() ? other : one;
  }

  /** What stands before the pages of a file. */
  private static List<Span> headOf(WorkbookFile file) {
    List<Span> head = new ArrayList<>();
    Optional.ofNullable(file.title()).map(Quoted::span).ifPresent(head::add);
    file.follows().forEach(follows -> head.add(follows.span()));
    Optional.ofNullable(file.currency()).map(Name::span).ifPresent(head::add);
    Optional.ofNullable(file.lengths()).map(ShownAs::span).ifPresent(head::add);
    file.pageOrder().forEach(page -> head.add(page.span()));
    return head;
  }

  /**
   * The segment whose cell decides a row; else the one in which the row is written or filled in;
   * absent for a row that nobody writes.
   */
  private static @Nullable RowSegment holding(Column column, int row) {
    RowSegment says = null;
    RowSegment there = null;
    for (RowSegment segment : column.table().segments()) {
      there = segment.opened() == null && segment.has(row) ? segment : there;
      boolean here = segment.sharedCell(column) == null && segment.cell(column, row).isPresent();
      says = here ? segment : says;
    }
    return says == null ? there : says;
  }

  /** The block of rows that a segment is. */
  BlockRevision block(Table table, RowSegment segment) throws EditRefused {
    RowsSection section = segment.written();
    if (section == null) {
      throw new EditRefused(
          "edit-of-list",
          "this row of '%s' stands in the list '%s'"
              .formatted(table, segment.cells().source().name()),
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
  private static Map<Column, String> address(Table table, int row) throws EditRefused {
    RowOpening opening =
        table
            .opens(row)
            .orElseThrow(
                () ->
                    new EditRefused(
                        "edit-of-plan", "this row of '%s' comes of a plan".formatted(table), ""));
    Map<Column, String> cells = new LinkedHashMap<>();
    cells.put(opening.each(), table.openedCell(opening.each(), row));
    if (opening.count() != null) {
      Column number = opening.count().number();
      cells.put(number, table.openedCell(number, row));
    }
    return cells;
  }

  /**
   * Adds a row where the nearest file has rows of a table: behind the last block with all of its
   * columns, or in a block of its own below the last one. Where no file has rows, it goes to the
   * end of the job.
   *
   * @return the file
   */
  public SourceText addRow(Table table, Map<Column, String> cells) throws EditRefused {
    return addRow(table, cells, segment -> true);
  }

  /** Adds a row to the job itself. */
  public SourceText addRowToJob(Table table, Map<Column, String> cells) throws EditRefused {
    return addRow(table, cells, segment -> segment.statedIn() == book.source());
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
    return last == null ? book.source() : last.statedIn();
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
    Optional<RowOpening> opening = table.opens(row);
    if (opening.isPresent()) {
      throw new EditRefused(
          "edit-of-opened-row",
          "the row \"%s\" of '%s' is opened from '%s'"
              .formatted(name(table, row), table, opening.get().from()),
          opening.get().count() == null
              ? "add or remove a row of '%s'".formatted(opening.get().from())
              : "change '%s' of '%s'"
                  .formatted(opening.get().count().upTo().name(), opening.get().from()));
    }
    for (RowSegment segment : table.rows()) {
      if (segment.brings(row)) {
        return new WrittenRow(block(table, segment), segment, segment.at(row));
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
  public String cellText(Column column, int row) throws EditRefused {
    WrittenRow written = written(column.table(), row);
    return written.block().cell(written.at(), column);
  }

  /**
   * Sets the cell of a row where people write it, whatever changes say of it.
   *
   * @throws EditRefused where nobody writes the row
   */
  public void setWrittenCell(Column column, int row, String entry) throws EditRefused {
    WrittenRow written = written(column.table(), row);
    written.block().set(written.at(), column, entry);
  }
}
