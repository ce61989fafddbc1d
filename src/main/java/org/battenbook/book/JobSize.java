package org.battenbook.book;

import org.battenbook.bound.Bound;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.WorkbookFile;

/** Adds up the sizes of a job's workbooks, and refuses those that make it too large. */
final class JobSize {
  private final Diagnostics diagnostics;
  private int workbooks;
  private int statements;
  private long statementText;
  private long characters;

  /**
   * Begins with no workbooks.
   *
   * @param diagnostics receives the refusal
   */
  JobSize(Diagnostics diagnostics) {
    this.diagnostics = diagnostics;
  }

  /** Adds a workbook that was parsed. */
  void add(WorkbookFile file) {
    workbooks++;
    statements += file.statements();
    statementText += file.statementText();
    characters += file.source().text().length();
    if (Bound.STATEMENTS.isPassedBy(statements)) {
      refuse(Bound.STATEMENTS.shown() + " statements in total", file.source().span(0, 0));
    } else if (Bound.STATEMENT_TEXT.isPassedBy(statementText)) {
      refuse(
          Bound.STATEMENT_TEXT.shown() + " in its statements in total", file.source().span(0, 0));
    }
  }

  /**
   * Whether the job may have one more workbook. If not, this is reported.
   *
   * @param follows where the workbook is named
   */
  boolean admits(SourceText text, Span follows) {
    if (Bound.WORKBOOK_FILES.isPassedBy(workbooks + 1)) {
      refuse(Bound.WORKBOOK_FILES.shown() + " workbooks", follows);
    } else if (Bound.WORKBOOK_TEXT.isPassedBy(characters + text.text().length())) {
      refuse(Bound.WORKBOOK_TEXT.shown() + " in its workbooks in total", follows);
    }
    return !diagnostics.isRefused();
  }

  private void refuse(String most, Span where) {
    diagnostics.refuse(
        "job-too-large",
        where,
        "with this workbook, the job has more than " + most,
        "follow fewer workbooks, or put long tables into lists");
  }
}
