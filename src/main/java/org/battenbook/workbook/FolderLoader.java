package org.battenbook.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.battenbook.book.Loader;
import org.battenbook.source.NearNames;
import org.battenbook.source.SourceText;
import org.jspecify.annotations.Nullable;

/**
 * Reads a job from its file, and what it follows from the job's folder and the folders below: a
 * workbook from elsewhere cannot reach for other files of the computer, by links neither.
 */
public final class FolderLoader implements Loader {
  /** The largest file that is read. */
  static final int MOST_BYTES = 64 << 20;

  private final Path job;
  private final int mostBytes;

  private FolderLoader(Path job, int mostBytes) {
    this.job = job;
    this.mostBytes = mostBytes;
  }

  /** A loader for a job and for what stands beside and below it. */
  public static Loader of(Path job) {
    return of(job, MOST_BYTES);
  }

  /**
   * A loader for a job by its path as a person wrote it.
   *
   * @throws Unreadable where no file can have such a name
   */
  public static Loader of(String job) throws Unreadable {
    try {
      return of(Path.of(job));
    } catch (InvalidPathException invalid) {
      throw new Unreadable("no-such-file", "'%s' cannot be a file's name".formatted(job), "");
    }
  }

  static Loader of(Path job, int mostBytes) {
    return new FolderLoader(job, mostBytes);
  }

  @Override
  public SourceText load(String path, @Nullable SourceText from) throws Unreadable {
    try {
      return from == null ? loadJob(path) : loadFollowed(path, from);
    } catch (InvalidPathException invalid) {
      throw new Unreadable("no-such-file", "'%s' cannot be a file's name".formatted(path), "");
    }
  }

  private SourceText loadJob(String path) throws Unreadable {
    return read(job, path, slashed(job));
  }

  private SourceText loadFollowed(String path, SourceText from) throws Unreadable {
    Path wanted = Path.of(from.name()).resolveSibling(path);
    Path root = real(folderOf(job), path);
    Path real = real(wanted, path);
    if (!real.startsWith(root)) {
      throw new Unreadable(
          "outside-the-folder",
          "'%s' lies outside the job's folder".formatted(path),
          "put what a job follows beside the job, or into a folder below it");
    }
    Path relative = root.relativize(real);
    return read(real, path, slashed(folderAsWritten().resolve(relative)));
  }

  private static Path folderOf(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    return folder == null ? file.toAbsolutePath() : folder;
  }

  private Path folderAsWritten() {
    Path parent = job.getParent();
    return parent == null ? Path.of("") : parent;
  }

  private SourceText read(Path file, String written, String name) throws Unreadable {
    if (Files.isDirectory(file)) {
      throw folder(file, written);
    }
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      throw new Unreadable("not-a-file", "'%s' is no ordinary file".formatted(written), "");
    }
    return SourceText.of(name, new Utf8Reader(written).text(bytes(file, written)));
  }

  /** One byte more than the most is enough to know that a file is too large. */
  private byte[] bytes(Path file, String written) throws Unreadable {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(mostBytes + 1);
      if (bytes.length > mostBytes) {
        throw tooLarge(written);
      }
      return bytes;
    } catch (IOException failure) {
      throw unreadable(file, written, failure);
    }
  }

  private Unreadable tooLarge(String written) {
    return new Unreadable(
        "file-too-large",
        "'%s' is larger than %s MB, the most that is read".formatted(written, mostBytes >> 20),
        "is it a workbook? a large one can be parted with 'follows'");
  }

  private static Path real(Path path, String written) throws Unreadable {
    try {
      return path.toRealPath();
    } catch (IOException failure) {
      throw unreadable(path, written, failure);
    }
  }

  static Unreadable unreadable(Path file, String written, IOException failure) {
    if (failure instanceof NoSuchFileException) {
      return new Unreadable(
          "no-such-file", "there is no file '%s'".formatted(written), nearFiles(file));
    }
    if (failure instanceof AccessDeniedException) {
      return new Unreadable(
          "file-not-permitted",
          "'%s' may not be read".formatted(written),
          "ask whoever owns it for permission to read it");
    }
    return new Unreadable(
        "unreadable-file", "'%s' cannot be read: %s".formatted(written, reason(failure)), "");
  }

  private static String reason(IOException failure) {
    String reason =
        failure instanceof FileSystemException inFile ? inFile.getReason() : failure.getMessage();
    return reason == null ? "the computer does not say why" : reason;
  }

  private static Unreadable folder(Path folder, String written) {
    List<String> inside = workbooksIn(folder);
    String repair =
        inside.isEmpty()
            ? "name a workbook, a file that ends in .batten"
            : "name one of the workbooks in it: " + String.join(", ", inside);
    return new Unreadable("is-a-folder", "'%s' is a folder".formatted(written), repair);
  }

  private static String nearFiles(Path file) {
    Path name = file.getFileName();
    return name == null ? "" : NearNames.question(name.toString(), workbooksIn(folderOf(file)));
  }

  private static List<String> workbooksIn(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".batten"))
          .sorted()
          .toList();
    } catch (IOException noList) {
      return List.of();
    }
  }

  private static String slashed(Path path) {
    return path.toString().replace(path.getFileSystem().getSeparator(), "/");
  }
}
