package org.battenbook.edit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.battenbook.book.Column;
import org.battenbook.edit.TextEdits.Replacement;
import org.battenbook.source.SourceText;
import org.battenbook.syntax.RowCells;
import org.battenbook.syntax.RowsSection;

/**
 * One block of rows under its headings, with other cells, columns and rows. The lines of rows that
 * do not change stay as they are.
 */
final class BlockRevision {
  private final RowsSection section;
  private final RowCells rows;
  private final List<Column> columns;
  private final List<Column> added = new ArrayList<>();
  private final Map<Integer, Map<Column, String>> changed = new HashMap<>();
  private final Set<Integer> removed = new HashSet<>();

  /** The lines by the row that they stand before; those at the end by the count of rows. */
  private final Map<Integer, List<NewLine>> inserted = new TreeMap<>();

  /** A line to be inserted: a row of the block that moves, or else new cells. */
  private record NewLine(int moved, Map<Column, String> cells) {}

  /**
   * A block of rows.
   *
   * @param columns one for each heading
   */
  BlockRevision(RowsSection section, List<Column> columns) {
    this.section = section;
    this.rows = section.rows();
    this.columns = columns;
  }

  /** Whether each of some columns has a heading here, or is given one. */
  boolean names(Set<Column> wanted) {
    return columns.containsAll(wanted) || allColumns().containsAll(wanted);
  }

  /** The text of a cell as it stands, or as it was set; empty where nothing stands. */
  String cell(int row, Column column) {
    String set = changed.getOrDefault(row, Map.of()).get(column);
    int at = columns.indexOf(column);
    return set != null ? set : at < 0 ? "" : rows.span(row, at).text();
  }

  /** Sets a cell. A column without a heading gets one. */
  void set(int row, Column column, String text) {
    if (text.equals(cell(row, column))) {
      return;
    }
    addHeading(column);
    changed.computeIfAbsent(row, r -> new LinkedHashMap<>()).put(column, text);
  }

  private void addHeading(Column column) {
    if (!columns.contains(column) && !added.contains(column)) {
      added.add(column);
    }
  }

  void remove(int row) {
    removed.add(row);
  }

  /** Inserts a row before another, or at the end. Columns without a heading get one. */
  void insert(int before, Map<Column, String> cells) {
    cells.keySet().forEach(this::addHeading);
    insertLine(before, new NewLine(-1, cells));
  }

  /** Moves a row before another, or to the end. */
  void move(int row, int before) {
    remove(row);
    insertLine(before, new NewLine(row, Map.of()));
  }

  private void insertLine(int before, NewLine line) {
    inserted.computeIfAbsent(before, b -> new ArrayList<>()).add(line);
  }

  int rowCount() {
    return rows.rowCount();
  }

  private List<Column> allColumns() {
    List<Column> all = new ArrayList<>(columns);
    all.addAll(added);
    return all;
  }

  void writeInto(TextEdits edits) {
    if (!added.isEmpty()) {
      edits.insert(headingsEnd(section), bars(added.stream().map(c -> c.name().text()).toList()));
    }
    for (int row = 0; row < rows.rowCount(); row++) {
      for (NewLine line : inserted.getOrDefault(row, List.of())) {
        edits.insertLineAbove(rows.start(row, 0), line(line));
      }
      if (removed.contains(row)) {
        edits.removeLines(lineOf(row), lineOf(row));
      } else {
        edits.replaceAll(replacements(row));
      }
    }
    for (NewLine line : inserted.getOrDefault(rows.rowCount(), List.of())) {
      edits.insertLineBelow(lastOffset(section), line(line));
    }
  }

  private String line(NewLine line) {
    return line.moved() < 0
        ? RowLines.under(section, allColumns(), line.cells())
        : movedLine(line.moved());
  }

  /** The line of a row as it stands, with its changes and its note. */
  private String movedLine(int row) {
    SourceText source = rows.source();
    int line = lineOf(row);
    return TextEdits.text(source.lineText(line), source.lineStart(line), replacements(row));
  }

  private int lineOf(int row) {
    return rows.source().line(rows.start(row, 0));
  }

  private static int headingsEnd(RowsSection section) {
    return section.headings().get(section.headings().size() - 1).span().end();
  }

  /** Where the last row of a block ends, or its headings if it has none. */
  static int lastOffset(RowsSection section) {
    RowCells rows = section.rows();
    return rows.rowCount() == 0
        ? headingsEnd(section)
        : rows.end(rows.rowCount() - 1, rows.width() - 1);
  }

  private List<Replacement> replacements(int row) {
    Map<Column, String> cells = changed.getOrDefault(row, Map.of());
    List<Replacement> replacements = new ArrayList<>();
    int owed = 0;
    for (int at = 0; at < rows.width(); at++) {
      String text = cells.get(columns.get(at));
      owed =
          text == null
              ? payBack(row, at, owed, replacements)
              : replace(row, at, text, owed, replacements);
    }
    if (!added.isEmpty()) {
      int end = rows.end(row, rows.width() - 1);
      List<String> texts = added.stream().map(c -> cells.getOrDefault(c, "")).toList();
      replacements.add(new Replacement(end, end, bars(texts)));
    }
    return replacements;
  }

  private static String bars(List<String> cells) {
    return cells.stream()
        .map(cell -> (RowLines.BAR + cell).stripTrailing())
        .collect(Collectors.joining());
  }

  /**
   * Another text in a cell. Bars stay one below the other where there is room: a longer text takes
   * the padding behind it, a shorter one leaves more.
   *
   * @param owed the characters by which the cells before it have grown
   * @return the characters by which the row has grown up to the bar behind this cell
   */
  private int replace(int row, int at, String text, int owed, List<Replacement> replacements) {
    int start = rows.start(row, at);
    int end = rows.end(row, at);
    String now = start == end && touchesBar(start) && !text.isEmpty() ? " " + text : text;
    int growth = owed + RowLines.length(now) - RowLines.length(rows.span(row, at).text());
    int paid = Math.max(0, Math.min(growth, paddingAfter(end)));
    String spaces = isFollowed(end) ? " ".repeat(Math.max(0, -growth)) : "";
    replacements.add(new Replacement(start, end + paid, now + spaces));
    return Math.max(0, growth) - paid;
  }

  /** A cell that stays gives up padding for those before it that have grown. */
  private int payBack(int row, int at, int owed, List<Replacement> replacements) {
    int end = rows.end(row, at);
    int paid = Math.min(owed, paddingAfter(end));
    if (paid > 0) {
      replacements.add(new Replacement(end, end + paid, ""));
    }
    return owed - paid;
  }

  private boolean touchesBar(int start) {
    return start > 0 && rows.source().text().charAt(start - 1) == '|';
  }

  /** The blanks between a cell and the bar or the note behind it, but for one. */
  private int paddingAfter(int end) {
    return isFollowed(end) ? Math.max(0, nextSign(end) - end - 1) : 0;
  }

  /** Whether a bar or a note stands behind a cell. */
  private boolean isFollowed(int end) {
    int next = nextSign(end);
    return next < rows.source().lineEnd(rows.source().line(end));
  }

  private int nextSign(int from) {
    String text = rows.source().text();
    int at = from;
    while (at < text.length() && text.charAt(at) == ' ') {
      at++;
    }
    return at;
  }
}
