package org.battenbook.saving;

import java.io.BufferedOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * New content of a file, whole and beside its place, until it takes that place in one step. All
 * files that are written are written by it. Whoever stages has claimed the file.
 */
final class StagedFile {
  private final Disk disk;
  private final Path file;
  private final Path part;

  private StagedFile(Disk disk, Path file) {
    this.disk = disk;
    this.file = file;
    this.part = SideFile.PART.of(file);
  }

  /** Who may read and write a new file. */
  enum Readers {
    /** Those who may read and write the file that it replaces; else as new files are. */
    AS_BEFORE,
    OWNER
  }

  /** Stages a content; what was staged before, and never put into its place, is removed. */
  static StagedFile of(Disk disk, Path file, Readers readers, Content content) throws IOException {
    StagedFile staged = new StagedFile(disk, file);
    try {
      disk.remove(staged.part);
      staged.write(readers, content);
    } catch (IOException | RuntimeException failure) {
      staged.discard();
      throw failure;
    }
    return staged;
  }

  /** Until its readers are known, nobody else can read it. */
  private void write(Readers readers, Content content) throws IOException {
    boolean replaces = Files.exists(file);
    try (OutputStream out = disk.create(part, replaces || readers == Readers.OWNER)) {
      write(content, new KeptOpen(out));
    }
    if (replaces && readers == Readers.AS_BEFORE) {
      disk.permitAs(part, file);
    }
  }

  private static void write(Content content, KeptOpen out) throws IOException {
    try (OutputStream buffered = new BufferedOutputStream(out)) {
      content.writeTo(buffered);
    } catch (IOException | RuntimeException failure) {
      if (out.failure != null) {
        throw out.failure;
      }
      throw failure;
    }
  }

  /** Waits until it is on the disk itself. */
  StagedFile synced() throws IOException {
    disk.sync(part);
    return this;
  }

  void put() throws IOException {
    disk.rename(part, file);
  }

  void discard() throws IOException {
    disk.remove(part);
  }

  /**
   * Lets a writer close its stream early, and remembers why it failed first: a library may say what
   * came of that instead.
   */
  private static final class KeptOpen extends FilterOutputStream {
    private @Nullable IOException failure;

    KeptOpen(OutputStream out) {
      super(out);
    }

    @Override
    public void write(byte[] bytes, int from, int count) throws IOException {
      try {
        out.write(bytes, from, count);
      } catch (IOException first) {
        failure = failure == null ? first : failure;
        throw first;
      }
    }

    @Override
    public void close() throws IOException {
      flush();
    }
  }
}
