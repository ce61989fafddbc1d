package org.battenbook.export.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.battenbook.bind.Spot;
import org.battenbook.export.file.Address;
import org.jspecify.annotations.Nullable;

/**
 * The layout of the sheet of derivations: which values it explains, and in which rows. The values
 * come page by page, and those of a table row by row.
 */
public final class DerivationLayout {
  public static final int NAME = 0;
  public static final int ROW = 1;
  public static final int RESULT = 2;
  public static final int UNIT = 3;
  public static final int FORMULA = 4;
  public static final int WITH_VALUES = 5;
  public static final int SET_IN = 6;
  public static final int CHANGED = 7;
  public static final int HEADING_ROW = 2;

  /**
   * The widest that texts make a column, in characters. All columns still fit on a printed page.
   */
  public static final int WIDEST_TEXT = 25;

  /** Each row has a link. Programs accept 65,530 links in a sheet, and nobody reads more rows. */
  private static final int MOST = 30_000;

  private final String sheet;
  private final boolean whole;
  private final List<Spot> spots = new ArrayList<>();
  private final List<Address> addresses = new ArrayList<>();
  private final Map<Spot, Integer> rows = new HashMap<>();

  /** Explains every value or, if there are too many, the lines and the first row of each table. */
  DerivationLayout(String sheet, List<SheetLayout> pages) {
    this.sheet = sheet;
    this.whole = pages.stream().mapToLong(DerivationLayout::size).sum() <= MOST;
    pages.forEach(this::addPage);
  }

  private static long size(SheetLayout page) {
    long cells =
        page.tables().values().stream()
            .mapToLong(table -> (long) table.columns().size() * table.rowCount())
            .sum();
    return cells + page.page().lines().size();
  }

  private void addPage(SheetLayout page) {
    page.tables().values().forEach(this::addTable);
    page.lineAddresses().forEach((line, at) -> add(new Spot(line, 0), at));
  }

  private void addTable(TableLayout table) {
    int count = table.rowCount();
    for (int row = 0; row < (whole ? count : Math.min(1, count)); row++) {
      int at = row;
      table.columns().keySet().forEach(c -> add(new Spot(c, at), table.cell(c, at)));
    }
  }

  private void add(Spot spot, Address at) {
    rows.put(spot, HEADING_ROW + 1 + spots.size());
    spots.add(spot);
    addresses.add(at);
  }

  public String sheet() {
    return sheet;
  }

  /** Whether every value is explained. */
  public boolean isWhole() {
    return whole;
  }

  /** The values, in the order of the rows. */
  public List<Spot> spots() {
    return spots;
  }

  /** The address of a value of the list, on the sheet of its page. */
  public Address address(int index) {
    return addresses.get(index);
  }

  /** The cell that explains a value, or null. */
  public @Nullable Address of(Spot spot) {
    Integer row = rows.get(spot);
    return row == null ? null : new Address(sheet, row, NAME);
  }

  /** The first row below everything. */
  public int end() {
    return HEADING_ROW + 1 + spots.size();
  }
}
