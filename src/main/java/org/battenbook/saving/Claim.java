package org.battenbook.saving;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * The right to write a file, which one process has at a time. It ends when it is closed, and with
 * its process, however that ends.
 */
public final class Claim implements AutoCloseable {
  private static final int TRIES = 30;
  private static final int MILLIS_BETWEEN = 100;
  private static final String PROCESS = "process ";

  private final Disk disk;
  private final Path file;
  private final @Nullable Closeable lock;

  private Claim(Disk disk, Path file, @Nullable Closeable lock) {
    this.disk = disk;
    this.file = file;
    this.lock = lock;
  }

  /**
   * Claims a file. While another process has it, this waits for up to three seconds.
   *
   * @param file a file that is there; a link is claimed as such
   * @throws NotWritten where another process has it, and says which
   */
  public static Claim of(Path file) throws NotWritten {
    try {
      return of(Disk.REAL, SideFile.named(file));
    } catch (IOException failure) {
      throw NotWritten.of(file, failure);
    }
  }

  static Claim of(Disk disk, Path file) throws NotWritten {
    for (int i = 1; i < TRIES; i++) {
      Claim claim = tried(disk, file);
      if (claim != null) {
        return claim;
      }
      pause(file);
    }
    Claim claim = tried(disk, file);
    if (claim == null) {
      throw new NotWritten(file, held(disk, file));
    }
    return claim;
  }

  /** The claim of a file, if it can be had at once. */
  static @Nullable Claim tried(Disk disk, Path file) throws NotWritten {
    try {
      Closeable lock = disk.lock(SideFile.CLAIM.of(file), holder());
      return lock == null ? null : new Claim(disk, file, lock);
    } catch (IOException failure) {
      throw NotWritten.of(file, failure);
    }
  }

  /** The length differs from process to process: a lock is checked by the size of its file. */
  private static String holder() {
    long process = ProcessHandle.current().pid();
    return PROCESS + process + " ".repeat((int) (process % 50)) + "\n";
  }

  private static void pause(Path file) throws NotWritten {
    try {
      Thread.sleep(MILLIS_BETWEEN);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new NotWritten(file, "another process uses it, and waiting was stopped");
    }
  }

  private static String held(Disk disk, Path file) {
    String holder = "another process";
    try {
      holder = disk.holder(SideFile.CLAIM.of(file));
    } catch (IOException gone) {
      // Whoever it was, it ends just now.
    }
    return "%s is changing it; wait until that ends, and run this again".formatted(holder);
  }

  /** The file, where it really is. */
  public Path file() {
    return file;
  }

  /** The same claim for whoever needs one of its file for a while: closing it lets nothing go. */
  Claim lent() {
    return new Claim(disk, file, null);
  }

  /** Lets go; the lock's file is removed while it is still locked. */
  @Override
  public void close() {
    if (lock == null) {
      return;
    }
    try (lock) {
      disk.remove(SideFile.CLAIM.of(file));
    } catch (IOException leftThere) {
      // The next claim takes it over.
    }
  }
}
