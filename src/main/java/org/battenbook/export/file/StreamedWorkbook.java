package org.battenbook.export.file;

import java.io.IOException;
import java.io.OutputStream;
import org.apache.commons.compress.archivers.zip.Zip64Mode;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.streaming.SheetDataWriter;

/** A file that is written row by row and keeps only a few rows in memory. */
final class StreamedWorkbook extends SXSSFWorkbook {
  private static final int ROWS_IN_MEMORY = 100;

  StreamedWorkbook() {
    super(null, ROWS_IN_MEMORY, false, true);
    setZip64Mode(Zip64Mode.AsNeeded);
  }

  @Override
  protected ZipArchiveOutputStream createArchiveOutputStream(OutputStream out) {
    ZipArchiveOutputStream zip = new StableZip(out);
    zip.setUseZip64(zip64Mode);
    return zip;
  }

  @Override
  protected SheetDataWriter createSheetDataWriter() throws IOException {
    return new ArrayFormulas(getSharedStringSource());
  }
}
