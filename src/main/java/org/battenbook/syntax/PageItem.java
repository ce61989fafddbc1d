package org.battenbook.syntax;

import org.battenbook.source.Span;

/** What may stand on a page. */
public sealed interface PageItem
    permits LineDefinition,
        TableSection,
        RowsSection,
        ListedRows,
        PlanSection,
        Requirement,
        Caution {
  Span span();
}
