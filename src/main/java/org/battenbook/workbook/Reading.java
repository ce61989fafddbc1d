package org.battenbook.workbook;

import java.util.List;
import org.battenbook.book.FollowedFiles;
import org.battenbook.evaluate.RowPlanner;
import org.battenbook.source.Diagnostic;

/**
 * How a workbook was read, so that it can be read again with other texts.
 *
 * @param files the files of the workbook
 * @param planning makes its plans, each of them once
 * @param diagnostics what was found wrong, or is worth reading
 */
record Reading(FollowedFiles files, RowPlanner planning, List<Diagnostic> diagnostics) {
  Reading {
    diagnostics = List.copyOf(diagnostics);
  }
}
