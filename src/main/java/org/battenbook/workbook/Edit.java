package org.battenbook.workbook;

import java.util.List;
import java.util.Map;
import org.battenbook.book.Place;
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
