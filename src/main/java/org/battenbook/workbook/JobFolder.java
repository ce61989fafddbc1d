package org.battenbook.workbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.battenbook.book.Loader.Unreadable;
import org.jspecify.annotations.Nullable;

/**
 * The folder that the paths in a job may lead into. A path that leads out is refused before
 * anything there is looked at, so the answer does not tell whether it exists.
 */
final class JobFolder {
  /** A share of a network, a drive, or a URL. */
  private static final Pattern ELSEWHERE =
      Pattern.compile(
          "[/\\\\]{2}.*|[A-Za-z]:.*|(?i:file):.*|[A-Za-z][\\w+.-]*:[/\\\\].*", Pattern.DOTALL);

  /** As many as Linux follows. */
  private static final int MOST_LINKS = 40;

  private final Path asWritten;
  private final Path real;

  private JobFolder(Path asWritten, Path real) {
    this.asWritten = asWritten;
    this.real = real;
  }

  /** The folder of a job that can be read. */
  static JobFolder of(Path job) throws IOException {
    Path folder = FolderLoader.folderOf(job);
    return new JobFolder(folder.normalize(), folder.toRealPath());
  }

  /** The folder itself, without links. */
  Path real() {
    return real;
  }

  /**
   * The real file that a path leads to.
   *
   * @param path as a workbook writes it
   * @param from the name of that workbook
   */
  Path file(String path, Path from, FileKind sought) throws Unreadable {
    if (ELSEWHERE.matcher(path).matches()) {
      throw outside(path);
    }
    Path file = inside(from.toAbsolutePath().resolveSibling(path).normalize(), path);
    try {
      Path found = linksFollowed(file, path);
      if (!found.toRealPath().startsWith(real)) {
        throw outside(path);
      }
      return found.toRealPath();
    } catch (IOException failure) {
      throw FolderLoader.unreadable(file, path, failure, sought);
    }
  }

  /** The same place below the real folder. */
  private Path inside(Path place, String written) throws Unreadable {
    if (place.startsWith(real)) {
      return place;
    }
    if (place.startsWith(asWritten)) {
      return real.resolve(asWritten.relativize(place));
    }
    throw outside(written);
  }

  /** Follows links one by one, and never looks at one that leads out. */
  private Path linksFollowed(Path file, String written) throws IOException, Unreadable {
    Path place = file;
    for (int links = 0; links < MOST_LINKS; links++) {
      Path link = firstLink(place);
      if (link == null) {
        if (links > 0 && !Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
          throw dangling(written);
        }
        return place;
      }
      Path rest = link.relativize(place);
      Path target = link.resolveSibling(Files.readSymbolicLink(link));
      place = inside(target.resolve(rest).normalize(), written);
    }
    throw new IOException("its links lead in a circle");
  }

  /** The first link on the way from the folder to a place in it. */
  private @Nullable Path firstLink(Path place) {
    Path at = real;
    for (Path step : real.relativize(place)) {
      at = at.resolve(step);
      if (Files.isSymbolicLink(at)) {
        return at;
      }
    }
    return null;
  }

  static boolean isDangling(Path file) {
    return Files.isSymbolicLink(file) && !Files.exists(file);
  }

  static Unreadable dangling(String written) {
    return new Unreadable(
        "no-such-file",
        "'%s' is a link to a file that is not there".formatted(written),
        "put the file there, or make the link again");
  }

  private static Unreadable outside(String written) {
    return new Unreadable(
        "outside-the-folder",
        "'%s' lies outside the job's folder".formatted(written),
        "put what a job uses beside the job, or into a folder below it");
  }
}
