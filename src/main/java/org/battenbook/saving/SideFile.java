package org.battenbook.saving;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;

/** The hidden files that stand beside a file for as long as it is being written. */
enum SideFile {
  /** The new content, until it takes the file's place. */
  PART(".battenbook-part"),
  /** Shows who writes the file. */
  CLAIM(".battenbook-claim"),
  /** Beside a job: what a save is about to do. */
  RECORD(".battenbook-save"),
  /** Beside another file of a save: the path to the job. */
  POINTER(".battenbook-job");

  private final String ending;

  SideFile(String ending) {
    this.ending = ending;
  }

  /** A file in its real folder, under its own name, which may be a link. */
  static Path named(Path file) throws IOException {
    Path whole = file.toAbsolutePath().normalize();
    return folder(whole).toRealPath().resolve(whole.getFileName());
  }

  /** The folder that a file is in. */
  static Path folder(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    return folder == null ? file.toAbsolutePath() : folder;
  }

  Path of(Path file) {
    return file.resolveSibling("." + file.getFileName() + ending);
  }

  boolean isBeside(Path file) {
    return Files.exists(of(file), LinkOption.NOFOLLOW_LINKS);
  }

  /** The file that this one stands beside; empty where it is none of ours. */
  Optional<Path> owner(Path side) {
    String name = String.valueOf(side.getFileName());
    return name.startsWith(".") && name.endsWith(ending) && name.length() > ending.length() + 1
        ? Optional.of(side.resolveSibling(name.substring(1, name.length() - ending.length())))
        : Optional.empty();
  }

  /** Whether a file is itself one of these. */
  static boolean isOne(Path file) {
    return Stream.of(values()).anyMatch(kind -> kind.owner(file).isPresent());
  }
}
