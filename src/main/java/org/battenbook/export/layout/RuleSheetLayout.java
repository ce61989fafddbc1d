package org.battenbook.export.layout;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.bind.BookRows;
import org.battenbook.book.Page;
import org.battenbook.export.file.Address;

/** The layout of the sheet of requirements and cautions. */
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

  /** The block of requirements and the block of cautions, as far as there are any. */
  public List<RuleLayout> blocks() {
    return blocks;
  }

  /** An absolute reference to the cells with the counts of a block. */
  public String counts(RuleLayout block) {
    return new Address(sheet, block.row(0), RuleLayout.COUNT).rangeFrom("", block.end() - 1);
  }

  /** The first row below everything. */
  public int end() {
    return blocks.stream().mapToInt(RuleLayout::end).reduce(TITLE_ROWS, Math::max);
  }
}
