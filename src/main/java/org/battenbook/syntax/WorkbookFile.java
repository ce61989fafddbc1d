package org.battenbook.syntax;

import java.util.List;
import org.battenbook.source.SourceText;
import org.jspecify.annotations.Nullable;

/**
 * One workbook file as written: its settings, then its statements, nested as pages and tables.
 *
 * @param edition which edition of the file this is, where it says so
 * @param pageOrder the pages that are shown before all others, or empty
 * @param statements how many statements it has, heads of pages and tables included, rows not
 * @param statementText how many characters those have
 */
public record WorkbookFile(
    SourceText source,
    @Nullable Quoted title,
    @Nullable Quoted edition,
    List<Follows> follows,
    @Nullable Name currency,
    @Nullable ShownAs lengths,
    List<Name> pageOrder,
    List<Change> changes,
    List<FunctionDefinition> functions,
    List<PageSection> pages,
    int statements,
    int statementText) {

  public WorkbookFile {
    follows = List.copyOf(follows);
    pageOrder = List.copyOf(pageOrder);
    changes = List.copyOf(changes);
    functions = List.copyOf(functions);
    pages = List.copyOf(pages);
  }
}
