package org.battenbook.workbook;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.battenbook.book.Column;
import org.battenbook.book.Place;
import org.battenbook.book.RowOpening;
import org.battenbook.edit.CellEdit;
import org.battenbook.edit.FormulaEdit;
import org.battenbook.edit.WorkbookEdit;

/** Edits of a {@link RandomWorkbook} as it came to be filled. */
final class RandomProposals {
  private static final List<String> COUNTS = List.of("0", "1", "1", "2", "3", "4", "");

  private RandomProposals() {}

  /** Another count of the rows that a table opens; empty where no table does. */
  static Optional<WorkbookEdit> count(Filled filled, Random random) {
    List<Column> counts =
        filled.book().tables().stream()
            .flatMap(table -> table.openings().stream())
            .map(RowOpening::count)
            .flatMap(Stream::ofNullable)
            .map(RowOpening.Count::upTo)
            .toList();
    if (counts.isEmpty()) {
      return Optional.empty();
    }
    Column column = counts.get(random.nextInt(counts.size()));
    int rows = filled.rows(column.table()).count();
    String count = COUNTS.get(random.nextInt(COUNTS.size()));
    if (!column.isGiven() || rows == 0 || random.nextInt(5) == 0) {
      return Optional.of(new FormulaEdit(column, count.isEmpty() ? "2" : count));
    }
    return Optional.of(new CellEdit(column, random.nextInt(rows), count));
  }

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
