package org.battenbook.cli;

import java.io.BufferedOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes a file whole or not at all: beside its place first, then moved there in one step. */
final class SafeFile {
  private SafeFile() {}

  /** Writes the content of a file. */
  interface Content {
    void writeTo(OutputStream out) throws IOException;
  }

  /**
   * Writes a file; an earlier one of that name stays as it was until the new one is whole.
   *
   * @throws IOException when it cannot be written; nothing has changed then
   */
  static void write(Path target, Content content) throws IOException {
    Path place = Files.exists(target) ? target.toRealPath() : target.toAbsolutePath();
    Path beside = newBeside(place);
    try {
      fill(beside, content);
      Files.move(
          beside, place, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(beside);
    }
  }

  private static void fill(Path beside, Content content) throws IOException {
    try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.WRITE)) {
      OutputStream out = new BufferedOutputStream(new KeptOpen(Channels.newOutputStream(channel)));
      content.writeTo(out);
      out.flush();
      channel.force(true);
    }
  }

  /** A new empty file; the half-written ones of earlier runs that were killed are stepped over. */
  private static Path newBeside(Path place) throws IOException {
    Path beside = part(place, 0);
    for (int i = 1; Files.exists(beside, LinkOption.NOFOLLOW_LINKS); i++) {
      beside = part(place, i);
    }
    return Files.createFile(beside);
  }

  private static Path part(Path place, int number) {
    return place.resolveSibling("." + place.getFileName() + ".part" + number);
  }

  /** Lets a writer close its stream and the file still be forced to the disk. */
  private static final class KeptOpen extends FilterOutputStream {
    KeptOpen(OutputStream out) {
      super(out);
    }

    @Override
    public void write(byte[] bytes, int from, int count) throws IOException {
      out.write(bytes, from, count);
    }

    @Override
    public void close() throws IOException {
      flush();
    }
  }
}
