package org.battenbook.syntax;

import java.util.List;
import org.battenbook.source.Span;
import org.jspecify.annotations.Nullable;

/**
 * {@code page name "Title"} and what stands under it, in order.
 *
 * @param note the words after {@code --}, or empty
 */
public record PageSection(
    Name name, @Nullable Quoted title, String note, Span span, List<PageItem> items) {

  public PageSection {
    items = List.copyOf(items);
  }
}
