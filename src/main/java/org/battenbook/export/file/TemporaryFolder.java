package org.battenbook.export.file;

import java.io.File;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.poi.util.TempFileCreationStrategy;

/**
 * The folder that holds the temporary files of one export. Only its owner may read it (mode 0700).
 * Closing it removes it. A run that was killed leaves its folder behind; the next export of the
 * same owner removes that one.
 */
final class TemporaryFolder implements TempFileCreationStrategy, AutoCloseable {
  static final String PREFIX = "battenbook-export-";

  /** A file that is locked while the run is alive. It also marks a folder as one of these. */
  static final String LOCK = "in-use.lock";

  /** A run first makes the file and then locks it. Until then it looks like a dead run. */
  private static final Duration MOMENT = Duration.ofMinutes(10);

  /**
   * Folders in use by this process. It must not open their locks a second time: when it closes a
   * locked file, some systems end every lock that it has on that file.
   */
  private static final Set<Path> IN_USE = ConcurrentHashMap.newKeySet();

  private final Path folder;
  private final FileChannel lock;

  private TemporaryFolder(Path folder, FileChannel lock) {
    this.folder = folder;
    this.lock = lock;
  }

  /**
   * Makes a folder where the system keeps temporary files.
   *
   * @throws IOException if it cannot be made; the message says what to do
   */
  static TemporaryFolder open() throws IOException {
    try {
      return locked(Files.createTempDirectory(PREFIX));
    } catch (IOException failure) {
      throw new IOException(
          "no folder for temporary files can be made;"
              + " name one that you may change, 'java -Djava.io.tmpdir=FOLDER -jar …'",
          failure);
    }
  }

  /** Makes a folder inside another folder. */
  static TemporaryFolder openIn(Path parent) throws IOException {
    return locked(Files.createTempDirectory(parent, PREFIX));
  }

  private static TemporaryFolder locked(Path folder) throws IOException {
    IN_USE.add(folder);
    FileChannel lock =
        FileChannel.open(
            folder.resolve(LOCK), StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    TemporaryFolder temporary = new TemporaryFolder(folder, lock);
    try {
      lock.lock();
    } catch (IOException failure) {
      temporary.close();
      throw failure;
    }
    temporary.removeDead();
    return temporary;
  }

  Path path() {
    return folder;
  }

  @Override
  public File createTempFile(String prefix, String suffix) throws IOException {
    return Files.createTempFile(folder, prefix, suffix).toFile();
  }

  @Override
  public File createTempDirectory(String prefix) throws IOException {
    return Files.createTempDirectory(folder, prefix).toFile();
  }

  @Override
  public void close() {
    try (lock) {
      removeFiles(folder);
    } catch (IOException leftThere) {
      // The export is done. A later one removes the rest.
    }
    removeEmptied(folder);
    IN_USE.remove(folder);
  }

  private void removeDead() {
    try (DirectoryStream<Path> all = Files.newDirectoryStream(folder.getParent(), PREFIX + "*")) {
      for (Path other : all) {
        if (!IN_USE.contains(other) && isOfSameOwner(other) && isOlder(other.resolve(LOCK))) {
          removeIfDead(other);
        }
      }
    } catch (IOException | DirectoryIteratorException notNow) {
      // An export must not fail because of files that another one left. A later one removes them.
    }
  }

  private boolean isOfSameOwner(Path other) throws IOException {
    return Files.isDirectory(other, LinkOption.NOFOLLOW_LINKS)
        && Files.getOwner(other, LinkOption.NOFOLLOW_LINKS).equals(Files.getOwner(folder));
  }

  private boolean isOlder(Path lock) throws IOException {
    return Files.isRegularFile(lock, LinkOption.NOFOLLOW_LINKS)
        && made(lock).plus(MOMENT).isBefore(made(folder.resolve(LOCK)));
  }

  private static Instant made(Path lock) throws IOException {
    return Files.getLastModifiedTime(lock).toInstant();
  }

  private static void removeIfDead(Path other) throws IOException {
    try (FileChannel lock =
        FileChannel.open(
            other.resolve(LOCK), StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS)) {
      if (lock.tryLock() == null) {
        return;
      }
      removeFiles(other);
    }
    removeEmptied(other);
  }

  /**
   * Removes all files but the lock. The lock goes last, because it shows that the folder is in use.
   */
  private static void removeFiles(Path folder) throws IOException {
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
      for (Path file : files) {
        if (!file.endsWith(LOCK)) {
          Files.deleteIfExists(file);
        }
      }
    } catch (DirectoryIteratorException failure) {
      throw failure.getCause();
    }
  }

  private static void removeEmptied(Path folder) {
    try {
      Files.deleteIfExists(folder.resolve(LOCK));
      Files.deleteIfExists(folder);
    } catch (IOException leftThere) {
      // A later export removes it.
    }
  }
}
