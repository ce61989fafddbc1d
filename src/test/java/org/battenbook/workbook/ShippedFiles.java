package org.battenbook.workbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.battenbook.book.Loader;
import org.battenbook.source.SourceText;
import org.jspecify.annotations.Nullable;

/** Opens jobs that stand anywhere, or in a test's text; what they follow is shipped. */
public final class ShippedFiles {
  static final Path WORKBOOKS = Path.of("workbooks");

  private ShippedFiles() {}

  /** The job of a file. */
  public static Workbook open(Path job) {
    return open(job.toString(), ShippedFiles::load);
  }

  /** A job of a text. */
  static Workbook open(String text) {
    return open(
        "job.batten", (path, from) -> from == null ? SourceText.of(path, text) : load(path, from));
  }

  private static Workbook open(String job, Loader loader) {
    try {
      return Workbook.open(job, loader);
    } catch (Loader.Unreadable e) {
      throw new IllegalStateException(e);
    }
  }

  private static SourceText load(String path, @Nullable SourceText from) throws Loader.Unreadable {
    Path file = from == null ? Path.of(path) : shipped(name(path));
    try {
      return SourceText.of(file.toString(), Files.readString(file));
    } catch (IOException e) {
      throw new Loader.Unreadable("no-such-file", "cannot read " + file, "");
    }
  }

  private static Path shipped(Path name) {
    Path standard = WORKBOOKS.resolve("standards").resolve(name);
    return Files.exists(standard) ? standard : WORKBOOKS.resolve(name);
  }

  private static Path name(String path) {
    return Path.of(path).getFileName();
  }
}
