package org.battenbook.workbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.battenbook.book.Loader.Unreadable;
import org.battenbook.saving.ShopFolder;
import org.jspecify.annotations.Nullable;

/**
 * The folders that the paths in a job may lead into: those of its shop, else its own and those
 * below. A path that leads out is refused before anything there is looked at, so the answer does
 * not tell whether it exists.
 */
final class JobFolder {
  /** A share of a network, a drive, or a URL. */
  private static final Pattern ELSEWHERE =
      Pattern.compile(
          "[/\\\\]{2}.*|[A-Za-z]:.*|(?i:file):.*|[A-Za-z][\\w+.-]*:[/\\\\].*", Pattern.DOTALL);

  /** As many as Linux follows. */
  private static final int MOST_LINKS = 40;

  /** The folder of the standards, in a shop or shipped. */
  static final Path STANDARDS = Path.of("standards");

  private final Path asWritten;
  private final Path real;
  private final Path reach;

  private JobFolder(Path asWritten, Path real) {
    this.asWritten = asWritten;
    this.real = real;
    this.reach = ShopFolder.around(real);
  }

  /** The folder of a job that can be read. */
  static JobFolder of(Path job) throws IOException {
    Path folder = FolderLoader.folderOf(job);
    return new JobFolder(folder.normalize(), folder.toRealPath());
  }

  /** The folder of the job itself, without links. */
  Path real() {
    return real;
  }

  /**
   * The folder that holds the job's own copy of the standards: beside a workbook, else in the shop.
   *
   * @param from the name of the workbook that follows them
   */
  Optional<Path> besideOwnStandards(Path from) {
    return Stream.of(realFolder(from), reach)
        .filter(folder -> Files.exists(folder.resolve(STANDARDS), LinkOption.NOFOLLOW_LINKS))
        .findFirst();
  }

  /** Whether a path has the form {@code standards/NAME}. */
  static boolean isInStandards(String path) {
    Path plain = Path.of(path).normalize();
    return plain.getNameCount() == 2 && plain.startsWith(STANDARDS);
  }

  /** The folder of a workbook that was read, without links. */
  private static Path realFolder(Path from) {
    Path folder = FolderLoader.folderOf(from);
    try {
      return folder.toRealPath();
    } catch (IOException gone) {
      return folder.normalize();
    }
  }

  /**
   * The real file that a path leads to.
   *
   * @param path as a workbook writes it
   * @param from the name of that workbook
   */
  Path file(String path, Path from, FileKind sought) throws Unreadable {
    return fileIn(realFolder(from), path, sought);
  }

  /**
   * The real file that a path leads to.
   *
   * @param written the path as a workbook writes it
   * @param folder the real folder that it starts from
   */
  Path fileIn(Path folder, String written, FileKind sought) throws Unreadable {
    if (ELSEWHERE.matcher(written).matches()) {
      throw outside(written);
    }
    Path file = inside(folder.resolve(written).normalize(), written);
    try {
      Path found = linksFollowed(file, written);
      if (!found.toRealPath().startsWith(reach)) {
        throw outside(written);
      }
      return found.toRealPath();
    } catch (IOException failure) {
      throw FolderLoader.unreadable(file, written, failure, sought);
    }
  }

  /** The same place below the real folders. */
  private Path inside(Path place, String written) throws Unreadable {
    if (place.startsWith(reach)) {
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
    throw new IOException("its links form a circle");
  }

  /** The first link on the way from the outermost folder to a place in it. */
  private @Nullable Path firstLink(Path place) {
    Path at = reach;
    for (Path step : reach.relativize(place)) {
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
        "put the file there, or create the link again");
  }

  private Unreadable outside(String written) {
    String name = written.substring(written.lastIndexOf('/') + 1);
    if (ShippedStandards.has(name)) {
      return new Unreadable(
          "outside-the-folder",
          "'%s' is outside the job's folder".formatted(written),
          "write \"standards/%s\" for the file that comes with Battenbook".formatted(name));
    }
    return ShopFolder.isShop(reach)
        ? new Unreadable(
            "outside-the-folder",
            "'%s' is outside the shop, the folder with shop.batten".formatted(written),
            "copy what the job uses into the shop's folder")
        : new Unreadable(
            "outside-the-folder",
            "'%s' is outside the job's folder".formatted(written),
            "put what the job uses beside it or in a folder below, or make a shop,"
                + " whose jobs share its files: battenbook start FOLDER");
  }
}
