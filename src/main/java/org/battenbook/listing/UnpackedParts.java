package org.battenbook.listing;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Collections;
import java.util.Enumeration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.poi.openxml4j.util.ZipEntrySource;
import org.battenbook.bound.Bound;
import org.jspecify.annotations.Nullable;

/**
 * The parts of a packed file, unpacked within bounds: the sizes that the file says itself may be
 * untrue. The spreadsheet library reads the very bytes that were counted, so it needs no guard of
 * its own against much that comes out of little, which refuses a list of many rows that are alike.
 */
final class UnpackedParts implements ZipEntrySource {
  /** Of what is held as a tree: relations, kinds of contents, properties. */
  private static final int MOST_BYTES_OF_TREES = 4 << 20;

  private final String name;
  private final Map<String, byte[]> parts = new LinkedHashMap<>();
  private long bytes;

  private UnpackedParts(String name) {
    this.name = name;
  }

  /**
   * Unpacks a file.
   *
   * @throws BadList where it holds more than any list needs
   * @throws IOException where it is no packed file
   */
  static UnpackedParts of(String name, byte[] packed) throws BadList, IOException {
    UnpackedParts unpacked = new UnpackedParts(name);
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(packed))) {
      for (ZipEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
        unpacked.add(part.getName(), zip);
      }
    }
    return unpacked;
  }

  private void add(String part, InputStream content) throws BadList, IOException {
    int most = isTree(part) ? MOST_BYTES_OF_TREES : Bound.LIST_UNPACKED.mostBytes();
    byte[] unpacked = unpacked(content, Math.min(most, Bound.LIST_UNPACKED.mostBytes() - bytes));
    bytes += unpacked.length;
    parts.put(part, unpacked);
    if (Bound.LIST_PARTS.isPassedBy(parts.size())) {
      throw tooManyParts();
    }
  }

  private static boolean isTree(String part) {
    return part.endsWith(".rels") || !part.startsWith("xl/");
  }

  private byte[] unpacked(InputStream content, long most) throws BadList, IOException {
    ByteArrayOutputStream unpacked = new ByteArrayOutputStream();
    byte[] buffer = new byte[1 << 16];
    for (int read = content.read(buffer); read >= 0; read = content.read(buffer)) {
      if (unpacked.size() + read > most) {
        throw tooLarge();
      }
      unpacked.write(buffer, 0, read);
    }
    return unpacked.toByteArray();
  }

  private BadList tooManyParts() {
    return new BadList(
        "list-too-large",
        "'%s' has more than the maximum of %s parts".formatted(name, Bound.LIST_PARTS.shown()),
        "copy the page that the table needs into its own file");
  }

  private BadList tooLarge() {
    return new BadList(
        "list-too-large",
        "'%s' unpacks to more than the maximum of %s".formatted(name, Bound.LIST_UNPACKED.shown()),
        "keep only the page, rows and columns that the table needs");
  }

  @Override
  public Enumeration<? extends ZipArchiveEntry> getEntries() {
    return Collections.enumeration(parts.keySet().stream().map(ZipArchiveEntry::new).toList());
  }

  @Override
  public @Nullable ZipArchiveEntry getEntry(String path) {
    return parts.keySet().stream()
        .filter(part -> part.equalsIgnoreCase(path))
        .findFirst()
        .map(ZipArchiveEntry::new)
        .orElse(null);
  }

  @Override
  public InputStream getInputStream(ZipArchiveEntry entry) throws IOException {
    byte[] part = parts.get(entry.getName());
    if (part == null) {
      throw new IOException("there is no part '%s'".formatted(entry.getName()));
    }
    return new ByteArrayInputStream(part);
  }

  @Override
  public void close() {}

  @Override
  public boolean isClosed() {
    return false;
  }
}
