package org.battenbook.export.file;

import java.io.IOException;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.model.SharedStringsTable;
import org.apache.poi.xssf.streaming.SheetDataWriter;
import org.jspecify.annotations.Nullable;

/**
 * Writes the cells of a sheet one after the other, with array formulas (ISO/IEC 29500-1, section
 * 18.3.1.40). The streaming writer of the library leaves array formulas out.
 */
final class ArrayFormulas extends SheetDataWriter {
  /** Marks an array formula. No formula begins with this character. */
  private static final String MARK = "{";

  ArrayFormulas(SharedStringsTable texts) throws IOException {
    super(texts);
  }

  /** Marks a formula, so that it is written as an array formula. */
  static String mark(String formula) {
    return MARK + formula;
  }

  @Override
  public void writeCell(int column, @Nullable Cell cell) throws IOException {
    if (cell == null || !isMarked(cell)) {
      super.writeCell(column, cell);
      return;
    }
    String address = cell.getAddress().formatAsString();
    _out.write("<c r=\"" + address + "\" s=\"" + cell.getCellStyle().getIndex() + "\"");
    switch (cell.getCachedFormulaResultType()) {
      case NUMERIC -> formula(cell, address, "n", Double.toString(cell.getNumericCellValue()));
      case BOOLEAN -> formula(cell, address, "b", cell.getBooleanCellValue() ? "1" : "0");
      case STRING -> formula(cell, address, "str", cell.getStringCellValue());
      default -> formula(cell, address, "e", "#N/A");
    }
    _out.write("</c>");
  }

  private static boolean isMarked(Cell cell) {
    return cell.getCellType() == CellType.FORMULA && cell.getCellFormula().startsWith(MARK);
  }

  private void formula(Cell cell, String address, String type, String value) throws IOException {
    _out.write(" t=\"" + type + "\"><f t=\"array\" ref=\"" + address + "\">");
    outputEscapedString(cell.getCellFormula().substring(MARK.length()));
    _out.write("</f><v>");
    outputEscapedString(value);
    _out.write("</v>");
  }
}
