package org.battenbook.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.io.OutputStream;
import java.util.stream.Stream;
import org.battenbook.export.SpreadsheetExport;
import org.battenbook.workbook.Workbook;
import org.junit.jupiter.params.provider.MethodSource;

/** A small workbook is exported as a spreadsheet file. */
class SpreadsheetFuzzTest {
  static Stream<byte[]> seeds() throws IOException {
    return Seeds.smallWorkbooks();
  }

  @MethodSource("seeds")
  @FuzzTest
  void spreadsheet(byte[] input) {
    Bounds.check(() -> export(FilesInOneText.of(input).open()));
  }

  private static void export(Workbook workbook) throws IOException {
    if (!workbook.hasFaults()) {
      SpreadsheetExport.write(workbook.fill(), OutputStream.nullOutputStream());
    }
  }
}
