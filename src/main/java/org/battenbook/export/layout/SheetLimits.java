package org.battenbook.export.layout;

import java.io.IOException;

/** How much a sheet may hold. ISO/IEC 29500 sets no limit; programs accept this much. */
public final class SheetLimits {
  private static final int ROWS = 1_048_576;
  private static final int COLUMNS = 16_384;

  private SheetLimits() {}

  /**
   * Checks a sheet before anything is written.
   *
   * @throws IOException if it has too many rows or columns
   */
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
