package org.battenbook.export;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Writes a zip file anew with one fixed time, so that the same workbook gives the same bytes. */
final class StableZip {
  /** The first time that a zip file can hold. */
  private static final LocalDateTime TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

  private StableZip() {}

  static void copy(ByteArrayOutputStream zip, OutputStream out) throws IOException {
    try (ZipInputStream from = new ZipInputStream(new ByteArrayInputStream(zip.toByteArray()))) {
      ZipOutputStream to = new ZipOutputStream(out);
      for (ZipEntry part = from.getNextEntry(); part != null; part = from.getNextEntry()) {
        ZipEntry stable = new ZipEntry(part.getName());
        stable.setTimeLocal(TIME);
        to.putNextEntry(stable);
        from.transferTo(to);
        to.closeEntry();
      }
      to.finish();
    }
  }
}
