package org.battenbook.workbook;

import java.util.Optional;
import java.util.Random;
import org.battenbook.book.Column;
import org.battenbook.book.Place;
import org.battenbook.edit.CellEdit;
import org.battenbook.edit.FormulaEdit;
import org.battenbook.edit.WorkbookEdit;

/** Edits of a {@link RandomWorkbook} as it came to be filled. */
final class RandomProposals {
  private RandomProposals() {}

  /** Another formula, or another entry in a cell; empty where the place is gone. */
  static Optional<WorkbookEdit> formulaOrCell(Filled filled, RandomWorkbook job, Random random) {
    RandomWorkbook.Candidate candidate = job.edit(random);
    Optional<Place> place = place(filled, candidate);
    String named = candidate.row();
    if (named == null) {
      return place.map(one -> new FormulaEdit(one, candidate.text()));
    }
    return place.flatMap(
        one ->
            filled
                .rows(((Column) one).table())
                .keys()
                .row(named)
                .map(row -> new CellEdit((Column) one, row, candidate.text())));
  }

  private static Optional<Place> place(Filled filled, RandomWorkbook.Candidate candidate) {
    if (candidate.table().isEmpty()) {
      return filled.book().pages().stream()
          .flatMap(page -> page.lines().stream())
          .filter(line -> line.name().text().equals(candidate.name()))
          .<Place>map(line -> line)
          .findFirst();
    }
    return Optional.ofNullable(filled.book().table(candidate.table()))
        .map(table -> table.column(candidate.name()));
  }
}
