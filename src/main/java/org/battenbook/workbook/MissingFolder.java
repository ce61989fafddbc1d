package org.battenbook.workbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.battenbook.source.NearNames;

/** Finds the folder on the way to a missing file that is not there itself. */
final class MissingFolder {
  private MissingFolder() {}

  /** What is missing: the first such folder, or else the file. */
  static String message(Path file, String written) {
    Path first = first(file);
    return first.equals(whole(file))
        ? "there is no file '%s'".formatted(written)
        : "there is no folder '%s' for '%s'".formatted(first.getFileName(), written);
  }

  /** The question whether a folder of a near name was meant; other advice where none is near. */
  static String questionOr(String otherwise, Path file) {
    Path first = first(file);
    Path parent = first.getParent();
    return first.equals(whole(file)) || parent == null
        ? otherwise
        : NearNames.questionOr(otherwise, String.valueOf(first.getFileName()), foldersIn(parent));
  }

  private static Path first(Path file) {
    Path missing = whole(file);
    Path parent = missing.getParent();
    while (parent != null && !Files.exists(parent)) {
      missing = parent;
      parent = missing.getParent();
    }
    return missing;
  }

  private static Path whole(Path file) {
    return file.toAbsolutePath().normalize();
  }

  private static List<String> foldersIn(Path parent) {
    try (Stream<Path> inside = Files.list(parent)) {
      return inside
          .filter(Files::isDirectory)
          .map(each -> String.valueOf(each.getFileName()))
          .sorted()
          .toList();
    } catch (IOException noList) {
      return List.of();
    }
  }
}
