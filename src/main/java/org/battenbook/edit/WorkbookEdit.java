package org.battenbook.edit;

import org.battenbook.bind.BookRows;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.Span;

/**
 * One edit of a workbook, as a person would make it in the texts of its files. Its places and rows
 * are those of one filled workbook.
 */
public sealed interface WorkbookEdit
    permits FormulaEdit,
        CellEdit,
        ChangeEdit,
        ChangeRemoval,
        LineAddition,
        LineRemoval,
        RowAddition,
        RowCopy,
        RowMove,
        RowRemoval {

  /** What it does, for people: {@code removing the row "oak" of 'mouldings'}. */
  String words(BookRows rows);

  /** Where what it changes stands today. */
  Span at(BookRows rows);

  /**
   * Looks at the text that was typed, if the edit has any.
   *
   * @param diagnostics takes what is wrong with it, each fault at its words
   */
  default void checkTyped(Diagnostics diagnostics) {}

  /**
   * Makes the edit in the texts of a workbook's files.
   *
   * @throws EditRefused where no text can say it
   */
  void writeInto(BookRevision revision) throws EditRefused;
}
