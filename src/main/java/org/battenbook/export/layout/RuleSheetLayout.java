package org.battenbook.export.layout;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.bind.BookRows;
import org.battenbook.book.Page;
import org.battenbook.export.file.Address;

/** Where the requirements and the cautions of a book stand, on a sheet of their own. */
public final class RuleSheetLayout {
  private static final int TITLE_ROWS = 1;

  private final String sheet;
  private final List<RuleLayout> blocks = new ArrayList<>();

  RuleSheetLayout(String sheet, Iterable<Page> pages, BookRows rows) {
    this.sheet = sheet;
    for (boolean required : new boolean[] {true, false}) {
      RuleLayout block = new RuleLayout(required, pages, rows, end());
      if (!block.rules().isEmpty()) {
        blocks.add(block);
      }
    }
  }

  public String sheet() {
    return sheet;
  }

  /** The requirements, the cautions: those of which there are any. */
  public List<RuleLayout> blocks() {
    return blocks;
  }

  /** The cells in which the rules of a block are counted, as a formula elsewhere names them. */
  public String counts(RuleLayout block) {
    return new Address(sheet, block.row(0), RuleLayout.COUNT).rangeFrom("", block.end() - 1);
  }

  /** The first row below everything. */
  public int end() {
    return blocks.stream().mapToInt(RuleLayout::end).reduce(TITLE_ROWS, Math::max);
  }
}
