package org.battenbook.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.battenbook.planstore.PlanStore;
import org.battenbook.saving.WholeFile;
import org.jspecify.annotations.Nullable;

/**
 * Plans in a folder of the user's cache, a file each, for nobody else to read. Whatever is wrong
 * with the folder or a file, plans are then worked out anew: it fails nowhere, and touches no file
 * that it did not write.
 */
final class CachedPlans implements PlanStore {
  /** Some ten jobs of a busy shop, each with its earlier states. */
  private static final int MOST_FILES = 200;

  /** As much as a few photographs: nobody should have to look for what fills the disk. */
  private static final long MOST_BYTES = 16L << 20;

  /** A plan of a hundred thousand pieces takes a third of it. */
  private static final int MOST_BYTES_OF_FILE = 4 << 20;

  private static final String ENDING = ".plan";

  /** Plans, and what runs that were killed left beside them. */
  private static final Pattern OURS =
      Pattern.compile("[0-9a-z]+\\.plan|\\.[0-9a-z]+\\.plan\\.battenbook-(part|claim)");

  private final Path folder;

  /**
   * Plans in a folder.
   *
   * @param folder made where it is not there, all its parents too
   */
  CachedPlans(Path folder) {
    this.folder = folder;
  }

  @Override
  public byte @Nullable [] read(String name) {
    Path file = folder.resolve(name + ENDING);
    try {
      if (!isUsable() || !isPlainFile(file) || Files.size(file) > MOST_BYTES_OF_FILE) {
        return null;
      }
      try (InputStream in =
          Files.newInputStream(file, StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS)) {
        return in.readNBytes(MOST_BYTES_OF_FILE);
      }
    } catch (IOException | SecurityException unreadable) {
      return null;
    }
  }

  @Override
  public void write(String name, byte[] entry) {
    if (entry.length > MOST_BYTES_OF_FILE) {
      return;
    }
    try {
      makeFolder();
      if (isUsable()) {
        writeWhole(folder.resolve(name + ENDING), entry);
        removeOldest();
      }
    } catch (IOException | SecurityException | UnsupportedOperationException unwritable) {
      // A plan that is not kept is worked out again.
    }
  }

  /** A link in place of the folder could lead to files of others. */
  private boolean isUsable() {
    return Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS);
  }

  private static boolean isPlainFile(Path file) {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
  }

  private void makeFolder() throws IOException {
    if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      Files.createDirectories(folder.getParent());
      Files.createDirectory(folder, forOwnerOnly());
    }
  }

  private FileAttribute<?>[] forOwnerOnly() {
    boolean hasPermissions = folder.getFileSystem().supportedFileAttributeViews().contains("posix");
    return hasPermissions
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------"))
        }
        : new FileAttribute<?>[0];
  }

  /** A file that is in place of it is replaced, anything else is not. */
  private void writeWhole(Path file, byte[] entry) throws IOException {
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS) || isPlainFile(file)) {
      WholeFile.writeForOwner(file, entry);
    }
  }

  /** One of our files; parts of runs that were killed are among them. */
  private record Aged(Path file, long bytes, long modified) {}

  private void removeOldest() throws IOException {
    List<Aged> newestFirst = ours();
    newestFirst.sort(Comparator.comparingLong(Aged::modified).reversed());
    long bytes = 0;
    for (int i = 0; i < newestFirst.size(); i++) {
      bytes += newestFirst.get(i).bytes();
      if (i >= MOST_FILES || bytes > MOST_BYTES) {
        Files.deleteIfExists(newestFirst.get(i).file());
      }
    }
  }

  private List<Aged> ours() throws IOException {
    List<Aged> ours = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : (Iterable<Path>) files::iterator) {
        if (OURS.matcher(String.valueOf(file.getFileName())).matches() && isPlainFile(file)) {
          BasicFileAttributes attributes =
              Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
          ours.add(new Aged(file, attributes.size(), attributes.lastModifiedTime().toMillis()));
        }
      }
    }
    return ours;
  }
}
