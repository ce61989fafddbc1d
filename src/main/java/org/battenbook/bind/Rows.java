package org.battenbook.bind;

import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.battenbook.book.Column;
import org.battenbook.book.Place;
import org.battenbook.book.RowOpening;
import org.battenbook.book.Table;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;

/**
 * The rows that a table came to have: what they are called, and where each comes from. Rows are
 * told by their index, counted from 0.
 */
public final class Rows {
  private final Table table;
  private final RowKeys keys;

  public Rows(Table table, RowKeys keys) {
    this.table = table;
    this.keys = keys;
  }

  /** A row of a table. */
  public record RowOf(Table table, int row) {}

  public Table table() {
    return table;
  }

  public int count() {
    return keys.names().size();
  }

  /** What they are called. */
  public RowKeys keys() {
    return keys;
  }

  public String name(int row) {
    return keys.name(row);
  }

  /** Each row's value in a column of the table. */
  public Stream<Spot> spots(Place column) {
    return IntStream.range(0, count()).mapToObj(row -> new Spot(column, row));
  }

  /** Where the name of a row stands, or of what that is opened from, or the plan it comes from. */
  public Span nameSpan(int row) {
    return table.nameSpan(row);
  }

  /** How a row is opened; empty for one that people write, and for one that a plan brings. */
  public Optional<RowOpening> opening(int row) {
    return table.opens(row);
  }

  /** The row of another table that opens a row; empty for one that people write. */
  public Optional<RowOf> openedFrom(int row) {
    return table.openedFrom(row).map(from -> new RowOf(from.table(), from.row()));
  }

  /** The statement that brings a row; for one that people write, that of the table. */
  public Span origin(int row) {
    return table.rowOrigin(row);
  }

  /**
   * The text of a cell that comes with an opened row: the row that opens it, or its number.
   *
   * @throws IllegalArgumentException when nothing opens the row, or it has no such cell
   */
  public String openedCell(Column column, int row) {
    return table.openedCell(column, row);
  }

  /** Where the cell of a row is written; empty where it is left to the column. */
  public Optional<Span> cell(Column column, int row) {
    return table.cell(column, row);
  }

  /** Whether a text says rows of the table, fills them in, or writes those that open them. */
  public boolean areStatedIn(SourceText text) {
    return table.isStatedIn(text);
  }
}
