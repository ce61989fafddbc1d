package org.battenbook.cli;

import java.io.BufferedOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;

/** Writes a file whole or not at all: beside its place first, then moved there in one step. */
final class SafeFile {
  private SafeFile() {}

  /** Writes the content of a file. */
  interface Content {
    void writeTo(OutputStream out) throws IOException;
  }

  /** A file that could not be written, and why, in words. */
  static final class NotWritten extends IOException {
    private static final long serialVersionUID = 1;

    NotWritten(Path target, String reason) {
      super("'%s' cannot be written: %s".formatted(target, reason));
    }
  }

  /**
   * Writes a file; an earlier one of that name stays as it was until the new one is whole.
   *
   * @throws NotWritten when it cannot be written; nothing has changed then
   */
  static void write(Path target, Content content) throws NotWritten {
    if (Files.isDirectory(target)) {
      throw new NotWritten(target, "it is a folder; name a file in it");
    }
    if (Files.exists(target) && !Files.isWritable(target)) {
      throw new NotWritten(target, "there is one already that may not be changed");
    }
    try {
      Path place = Files.exists(target) ? target.toRealPath() : target.toAbsolutePath();
      writeBeside(place, content);
    } catch (IOException failure) {
      throw new NotWritten(target, reason(failure, target));
    }
  }

  private static void writeBeside(Path place, Content content) throws IOException {
    Path beside = newBeside(place);
    try {
      fill(beside, content);
      keepPermissions(place, beside);
      Files.move(
          beside, place, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(beside);
    }
  }

  /** Who may read and write a file stays as it was, where the computer knows such a thing. */
  private static void keepPermissions(Path earlier, Path later) throws IOException {
    PosixFileAttributeView view = Files.getFileAttributeView(earlier, PosixFileAttributeView.class);
    if (view != null && Files.exists(earlier)) {
      Files.setPosixFilePermissions(later, view.readAttributes().permissions());
    }
  }

  private static String reason(IOException failure, Path target) {
    if (failure instanceof NoSuchFileException) {
      return "there is no folder '%s'".formatted(target.getParent());
    }
    if (failure instanceof AccessDeniedException) {
      return "its folder may not be changed";
    }
    String reason =
        failure instanceof FileSystemException inFile ? inFile.getReason() : failure.getMessage();
    return reason == null ? "the computer does not say why" : reason;
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
