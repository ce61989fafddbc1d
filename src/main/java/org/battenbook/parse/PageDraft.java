package org.battenbook.parse;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.source.Span;
import org.battenbook.syntax.Name;
import org.battenbook.syntax.PageItem;
import org.battenbook.syntax.PageSection;
import org.battenbook.syntax.Quoted;
import org.jspecify.annotations.Nullable;

/** A page while its lines are read. */
final class PageDraft {
  private final Name name;
  private final @Nullable Quoted title;
  private final String note;
  private final List<PageItem> items = new ArrayList<>();
  private Span span;

  PageDraft(Name name, @Nullable Quoted title, String note, Span span) {
    this.name = name;
    this.title = title;
    this.note = note;
    this.span = span;
  }

  void add(PageItem item) {
    span = span.to(item.span());
    items.add(item);
  }

  PageSection section() {
    return new PageSection(name, title, note, span, items);
  }
}
