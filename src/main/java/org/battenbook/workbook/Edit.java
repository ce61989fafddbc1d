package org.battenbook.workbook;

import java.util.List;
import org.battenbook.book.Place;
import org.battenbook.source.Diagnostic;
import org.jspecify.annotations.Nullable;

/**
 * What came of an edit.
 *
 * @param filled the workbook after it; absent where the edit is at fault
 * @param ran the places that were worked out again, in order
 * @param diagnostics what is wrong with it, or worth reading
 */
public record Edit(@Nullable Filled filled, List<Place> ran, List<Diagnostic> diagnostics) {
  public Edit {
    ran = List.copyOf(ran);
    diagnostics = List.copyOf(diagnostics);
  }
}
