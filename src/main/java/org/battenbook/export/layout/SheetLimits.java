package org.battenbook.export.layout;

import java.io.IOException;

/** What a sheet can hold: ISO/IEC 29500 leaves it open, programs take so much. */
public final class SheetLimits {
  private static final int ROWS = 1_048_576;
  private static final int COLUMNS = 16_384;

  private SheetLimits() {}

  public static void check(SheetLayout sheet) throws IOException {
    if (sheet.end() > ROWS) {
      throw new IOException(
          "page '%s' takes %d rows, and a sheet has no more than %d"
              .formatted(sheet.page(), sheet.end(), ROWS));
    }
    if (sheet.visibleColumns() > COLUMNS / 2) {
      throw new IOException(
          "page '%s' takes %d columns, too many for a sheet"
              .formatted(sheet.page(), sheet.visibleColumns()));
    }
  }
}
