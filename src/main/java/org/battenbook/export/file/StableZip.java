package org.battenbook.export.file;

import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;

/**
 * A zip file in which each part has the same fixed time, so that the same parts give the same
 * bytes.
 */
final class StableZip extends ZipArchiveOutputStream {
  /** The earliest time that a zip file can hold. */
  private static final LocalDateTime TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

  StableZip(OutputStream out) {
    super(out);
  }

  @Override
  public void putArchiveEntry(ZipArchiveEntry part) throws IOException {
    ZipArchiveEntry stable = new ZipArchiveEntry(part.getName());
    stable.setTimeLocal(TIME);
    super.putArchiveEntry(stable);
  }
}
