package org.battenbook.workbook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.battenbook.book.Place;
import org.battenbook.edit.CellEdit;
import org.battenbook.edit.WorkbookEdit;
import org.battenbook.evaluate.Refill;
import org.battenbook.source.Diagnostic;
import org.battenbook.source.SourceText;
import org.jspecify.annotations.Nullable;

/**
 * The outcome of an edit. Nothing is written to disk.
 *
 * @param filled the workbook after it; absent where the edit is refused
 * @param ran the places that were worked out again, in order
 * @param diagnostics why it is refused; else cautions that were not told before
 */
public record Edit(@Nullable Filled filled, List<Place> ran, List<Diagnostic> diagnostics) {
  public Edit {
    ran = List.copyOf(ran);
    diagnostics = List.copyOf(diagnostics);
  }

  /**
   * An edit whose values are worked out again.
   *
   * @param edits those that the texts do not hold yet
   * @return empty where values depend on the order of the fill, or where an edited cell stands in
   *     another row now, as an edit names it by index: then the text has to be read again
   */
  static Optional<Edit> of(Refill.Refilled refilled, Reading reading, List<WorkbookEdit> edits) {
    boolean haveMoved =
        edits.stream()
            .anyMatch(
                one ->
                    one instanceof CellEdit cell
                        && refilled.moved().contains(cell.column().table()));
    return haveMoved || refilled.results().areCutShort()
        ? Optional.empty()
        : Optional.of(
            new Edit(new Filled(refilled.results(), reading, edits), refilled.ran(), List.of()));
  }

  static Edit refused(List<Diagnostic> diagnostics) {
    return new Edit(null, List.of(), diagnostics);
  }

  /**
   * The new text of each file that the edits since the workbook was loaded change, by the text as
   * it was loaded; none where the edit is refused.
   */
  public Map<SourceText, String> texts() {
    return filled == null ? Map.of() : filled.revisions();
  }
}
