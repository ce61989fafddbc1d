package org.battenbook.edit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.battenbook.bind.BookRows;
import org.battenbook.bind.Rows;
import org.battenbook.book.Book;
import org.battenbook.book.Column;
import org.battenbook.book.FollowedFiles;
import org.battenbook.book.Table;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.WorkbookFile;

/**
 * The files of a workbook with edits in their texts. Each edit goes to the file that owns what it
 * changes. Everything else stays as it is, to the byte.
 */
public final class BookRevision {
  private final Book book;
  private final FollowedFiles files;
  private final BookRows rowsOf;
  private final Map<SourceText, TextEdits> edits = new LinkedHashMap<>();
  private final StatementRevision statements = new StatementRevision(this);
  private final RowRevision rows = new RowRevision(this);

  /**
   * A book without edits yet.
   *
   * @param files that the book was put together from
   * @param rowsOf the rows that its tables have
   */
  public BookRevision(Book book, FollowedFiles files, BookRows rowsOf) {
    this.book = book;
    this.files = files;
    this.rowsOf = rowsOf;
  }

  /** The new text of each file that changes, by its name. To be called once, after all edits. */
  public Map<String, String> texts() throws EditRefused {
    rows.writeInto();
    Map<String, String> texts = new LinkedHashMap<>();
    edits.forEach((source, edit) -> texts.put(source.name(), edit.text()));
    return texts;
  }

  Book book() {
    return book;
  }

  /** The job as it is written. */
  WorkbookFile job() {
    return files.job();
  }

  Rows rowsOf(Table table) {
    return rowsOf.rows(table);
  }

  TextEdits edits(SourceText source) {
    return edits.computeIfAbsent(source, TextEdits::new);
  }

  /** Whether people write a text themselves. Other texts stand for lists, plans and opened rows. */
  boolean isWritten(SourceText source) {
    return files.inOrder().stream().anyMatch(file -> file.source() == source);
  }

  StatementRevision statements() {
    return statements;
  }

  RowRevision rows() {
    return rows;
  }

  /**
   * The row in which people write a cell, or would write it; empty where an edit of the cell writes
   * something else, or is refused.
   */
  public Optional<Span> rowOf(Column column, int row) {
    return rows.rowOf(column, row);
  }

  /**
   * Adds a row where the nearest file has rows of a table.
   *
   * @return the file
   * @throws EditRefused where nobody writes rows of the table
   */
  public SourceText addRow(Table table, Map<Column, String> cells) throws EditRefused {
    return rows.addRow(table, cells);
  }

  /** Adds a row to the job itself. */
  public SourceText addRowToJob(Table table, Map<Column, String> cells) throws EditRefused {
    return rows.addRowToJob(table, cells);
  }

  /**
   * The text of the cell that people write for a row.
   *
   * @return empty where the row leaves the cell to its column
   * @throws EditRefused where nobody writes the row
   */
  public String cellText(Column column, int row) throws EditRefused {
    return rows.cellText(column, row);
  }

  /**
   * Sets the cell of a row where people write it, whatever changes say of it.
   *
   * @throws EditRefused where nobody writes the row
   */
  public void setWrittenCell(Column column, int row, String entry) throws EditRefused {
    rows.setWrittenCell(column, row, entry);
  }
}
