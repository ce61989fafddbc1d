package org.battenbook.export;

import static java.util.Objects.requireNonNull;

import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.battenbook.bind.Spot;
import org.battenbook.book.Column;
import org.battenbook.export.file.Address;
import org.battenbook.export.layout.FileLayout;
import org.battenbook.export.layout.SheetLayout;
import org.battenbook.export.layout.TableLayout;
import org.battenbook.workbook.Filled;

/** Where each value of a filled workbook stands in its file. */
final class Places {
  private Places() {}

  static Map<Spot, Address> of(Filled filled) {
    Map<Spot, Address> places = new LinkedHashMap<>();
    for (SheetLayout sheet : new FileLayout(filled.checked().book(), filled.results()).sheets()) {
      sheet.lineAddresses().forEach((line, at) -> places.put(new Spot(line, 0), at));
      sheet.tables().values().forEach(table -> addTable(table, places));
    }
    return places;
  }

  static Address at(Filled filled, Spot spot) {
    return requireNonNull(of(filled).get(spot));
  }

  private static void addTable(TableLayout table, Map<Spot, Address> places) {
    for (Column column : table.columns().keySet()) {
      for (int row = 0; row < table.rowCount(); row++) {
        places.put(new Spot(column, row), table.cell(column, row));
      }
    }
  }

  static Cell cell(XSSFWorkbook book, Address at) {
    return requireNonNull(
        requireNonNull(book.getSheet(at.sheet()).getRow(at.row())).getCell(at.column()));
  }
}
