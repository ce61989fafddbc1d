package org.battenbook.workbook;

import java.util.List;
import org.battenbook.book.FollowedFiles;
import org.battenbook.evaluate.RowPlanner;
import org.battenbook.source.Diagnostic;

/**
 * How a workbook was read, so that it can be read again with other texts.
 *
 * @param files what it was put together from
 * @param planning how its plans are worked out; what was planned is not planned again
 * @param diagnostics what was worth telling
 */
record Reading(FollowedFiles files, RowPlanner planning, List<Diagnostic> diagnostics) {
  Reading {
    diagnostics = List.copyOf(diagnostics);
  }
}
