package org.battenbook.listing;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.battenbook.bound.Bound;

/**
 * Refuses a packed file that unpacks to more than any list needs, by unpacking it into nothing: the
 * sizes that it says itself may be untrue.
 */
final class UnpackedSize {
  /** Of what is held as a tree: relations, kinds of contents, properties. */
  private static final int MOST_BYTES_OF_TREES = 4 << 20;

  private static final int MOST_PARTS = 1_000;

  private UnpackedSize() {}

  static void check(String name, byte[] packed) throws BadList, IOException {
    long all = 0;
    int parts = 0;
    byte[] buffer = new byte[1 << 16];
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(packed))) {
      for (ZipEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
        int most = isTree(part.getName()) ? MOST_BYTES_OF_TREES : Bound.LIST_UNPACKED.mostBytes();
        all += size(zip, Math.min(most, Bound.LIST_UNPACKED.mostBytes() - all), buffer, name);
        if (++parts > MOST_PARTS) {
          throw tooManyParts(name);
        }
      }
    }
  }

  private static BadList tooManyParts(String name) {
    return new BadList(
        "list-too-large",
        "'%s' has more than %s parts, the most that are read".formatted(name, MOST_PARTS),
        "copy the page that the table needs into a file of its own");
  }

  private static boolean isTree(String part) {
    return part.endsWith(".rels") || !part.startsWith("xl/");
  }

  private static long size(InputStream part, long most, byte[] buffer, String name)
      throws BadList, IOException {
    long size = 0;
    for (int read = part.read(buffer); read >= 0; read = part.read(buffer)) {
      size += read;
      if (size > most) {
        throw tooLarge(name);
      }
    }
    return size;
  }

  private static BadList tooLarge(String name) {
    return new BadList(
        "list-too-large",
        "'%s' unpacks to more than %s, the most that is read"
            .formatted(name, Bound.LIST_UNPACKED.shown()),
        "keep only the page, rows and columns that the table needs");
  }
}
