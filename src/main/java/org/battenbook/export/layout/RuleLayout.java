package org.battenbook.export.layout;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.bind.BookRows;
import org.battenbook.book.Page;
import org.battenbook.book.Rule;
import org.battenbook.book.Table;
import org.jspecify.annotations.Nullable;

/** The layout of a block of requirements or of cautions. */
public final class RuleLayout {
  public static final int OF = 0;
  public static final int COUNT = 1;
  public static final int ROWS = 2;
  public static final int SET_IN = 3;
  public static final int SAYS = 4;

  private final boolean required;
  private final int headingRow;
  private final List<Ruled> rules = new ArrayList<>();

  /**
   * A rule with its page and its table. A rule of a page has no table.
   *
   * @param rowCount how many rows it checks; 1 for a rule of a page
   */
  public record Ruled(Rule rule, Page page, @Nullable Table table, int rowCount) {}

  /**
   * Places the rules of one kind.
   *
   * @param required whether they are requirements, rather than cautions
   * @param below the first free row
   */
  RuleLayout(boolean required, Iterable<Page> pages, BookRows rows, int below) {
    this.required = required;
    this.headingRow = below + 2;
    for (Page page : pages) {
      page.rules().forEach(rule -> add(new Ruled(rule, page, null, 1)));
      for (Table table : page.tables()) {
        table.rules().forEach(rule -> add(new Ruled(rule, page, table, rows.rows(table).count())));
      }
    }
  }

  /** Adds a rule of this kind. A rule of a table without rows is left out. */
  private void add(Ruled ruled) {
    if (ruled.rule().required() == required && ruled.rowCount() > 0 && !ruled.rule().isStanding()) {
      rules.add(ruled);
    }
  }

  public boolean isRequired() {
    return required;
  }

  public List<Ruled> rules() {
    return rules;
  }

  public int headingRow() {
    return headingRow;
  }

  /** The row of a rule, by its position in the block. */
  public int row(int index) {
    return headingRow + 1 + index;
  }

  /** The first row below the block. */
  int end() {
    return row(rules.size());
  }
}
