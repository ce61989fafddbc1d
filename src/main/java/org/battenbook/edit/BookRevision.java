package org.battenbook.keep;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.battenbook.book.Book;
import org.battenbook.book.Column;
import org.battenbook.book.Page;
import org.battenbook.book.RowSegment;
import org.battenbook.book.Table;
import org.battenbook.source.SourceText;
import org.battenbook.syntax.RowCells;
import org.battenbook.syntax.RowsSection;

/** The files of a workbook with rows added and counts lowered. */
final class WorkbookRevision {
  private static final Pattern WHOLE = Pattern.compile("\\d+");

  private final Book book;
  private final Map<SourceText, TextEdits> edits = new LinkedHashMap<>();
  private final Map<SourceText, Page> lastPages = new HashMap<>();

  WorkbookRevision(Book book) {
    this.book = book;
  }

  /** The text of each file that changes. */
  Map<SourceText, String> texts() {
    Map<SourceText, String> texts = new LinkedHashMap<>();
    edits.forEach((source, edit) -> texts.put(source, edit.text()));
    return texts;
  }

  private TextEdits edits(SourceText source) {
    return edits.computeIfAbsent(source, TextEdits::new);
  }

  /**
   * Lowers counts in the rows that people write of a table.
   *
   * @param counts by row: what is there, and how many of them are taken
   * @throws NotKept where rows stand in a list, or are opened from another table
   */
  void lower(Table table, Column column, Map<Integer, Taken> counts) throws NotKept {
    Map<RowSegment, Map<Integer, Taken>> bySegment = new LinkedHashMap<>();
    for (Map.Entry<Integer, Taken> count : counts.entrySet()) {
      RowSegment segment = segment(table, count.getKey());
      bySegment
          .computeIfAbsent(segment, first -> new TreeMap<>())
          .put(count.getKey() - segment.firstRow(), count.getValue());
    }
    for (Map.Entry<RowSegment, Map<Integer, Taken>> one : bySegment.entrySet()) {
      lower(one.getKey(), section(table, one.getKey()), column, one.getValue());
    }
  }

  private static RowSegment segment(Table table, int row) {
    return table.rows().stream()
        .filter(one -> row < one.firstRow() + one.cells().rowCount())
        .findFirst()
        .orElseThrow();
  }

  private static RowsSection section(Table table, RowSegment segment) throws NotKept {
    RowsSection section = segment.written();
    if (section == null) {
      String where =
          segment.list() == null ? "other tables" : "'" + segment.cells().source().name() + "'";
      throw new NotKept(
          "rows of '%s' that are taken come from %s: only rows that a workbook says itself can be"
                  .formatted(table, where)
              + " changed; write them under 'rows of %s'".formatted(table));
    }
    return section;
  }

  private void lower(
      RowSegment segment, RowsSection section, Column column, Map<Integer, Taken> counts) {
    int at = segment.columns().indexOf(column);
    if (at >= 0) {
      counts.forEach((row, taken) -> lowerCell(section.rows(), row, at, taken));
    } else {
      addColumn(section, column, counts);
    }
  }

  /** Another text in a cell; where there is room, bars stay one below the other. */
  private void lowerCell(RowCells cells, int row, int column, Taken taken) {
    String text = cells.source().text();
    int start = cells.start(row, column);
    int end = cells.end(row, column);
    String old = text.substring(start, end);
    String now = old.isEmpty() ? " " + taken.left() : lowered(old, taken);
    if (column + 1 < cells.width()) {
      int room = end;
      while (room - end < now.length() - old.length() && text.startsWith("  ", room)) {
        room++;
      }
      end = room;
      now += " ".repeat(Math.max(0, old.length() - now.length()));
    }
    edits(cells.source()).replace(start, end, now);
  }

  private static String lowered(String old, Taken taken) {
    return WHOLE.matcher(old).matches()
        ? Integer.toString(taken.left())
        : "(%s) - %d".formatted(old, taken.taken());
  }

  /** A heading behind the others, and a cell in every row. */
  private void addColumn(RowsSection section, Column column, Map<Integer, Taken> counts) {
    RowCells cells = section.rows();
    TextEdits edit = edits(cells.source());
    edit.insert(lastHeadingEnd(section), " | " + column.name());
    for (int row = 0; row < cells.rowCount(); row++) {
      Taken taken = counts.get(row);
      edit.insert(cells.end(row, cells.width() - 1), taken == null ? " |" : " | " + taken.left());
    }
  }

  private static int lastHeadingEnd(RowsSection section) {
    return section.headings().get(section.headings().size() - 1).span().end();
  }

  /**
   * Adds rows where the nearest file has rows of the table; else, to the job.
   *
   * @return the file
   */
  SourceText add(Table table, List<NewRow> rows) {
    return add(table, rows, source -> true);
  }

  /** Adds rows to the job itself. */
  SourceText addToJob(Table table, List<NewRow> rows) {
    return add(table, rows, source -> source == book.source());
  }

  private SourceText add(Table table, List<NewRow> rows, Predicate<SourceText> mayStand) {
    RowSegment nearest = null;
    for (RowSegment segment : table.rows()) {
      boolean fits = segment.written() != null && mayStand.test(segment.statedIn());
      nearest = fits ? segment : nearest;
    }
    if (rows.isEmpty() || nearest == null) {
      addBlock(table, rows);
      return book.source();
    }
    add(Objects.requireNonNull(nearest.written()), nearest.columns(), table, rows);
    return nearest.statedIn();
  }

  private void add(RowsSection section, List<Column> columns, Table table, List<NewRow> rows) {
    TextEdits edit = edits(section.span().source());
    if (!columns.containsAll(NewRows.columns(table, rows))) {
      edit.insertLine(lastOf(section), "");
      String indentation = NewRows.indentation(section.span().start(), section.span().source());
      NewRows.block(indentation, table, rows)
          .forEach(line -> edit.insertLine(lastOf(section), line));
    } else {
      NewRows.under(section, columns, rows).forEach(line -> edit.insertLine(lastOf(section), line));
    }
  }

  private static int lastOf(RowsSection section) {
    RowCells cells = section.rows();
    return cells.rowCount() == 0
        ? lastHeadingEnd(section)
        : cells.end(cells.rowCount() - 1, cells.width() - 1);
  }

  /** Rows with headings of their own at the end of the job. */
  private void addBlock(Table table, List<NewRow> rows) {
    if (rows.isEmpty()) {
      return;
    }
    TextEdits edit = edits(book.source());
    edit.append("");
    if (lastPages.put(book.source(), table.page()) != table.page()) {
      edit.append("page " + table.page().name());
    }
    NewRows.block("  ", table, rows).forEach(edit::append);
  }
}
