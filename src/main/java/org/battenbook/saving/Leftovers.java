package org.battenbook.saving;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What runs that were killed left beside the files that they wrote. */
final class Leftovers {
  private Leftovers() {}

  /** Removes those of a folder; what belongs to a save of several files is left to it. */
  static void clear(Disk disk, Path folder) throws IOException {
    for (Path file : ownersOfLeftovers(folder)) {
      clearBeside(disk, file);
    }
  }

  private static Set<Path> ownersOfLeftovers(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .flatMap(file -> Stream.of(SideFile.PART.owner(file), SideFile.CLAIM.owner(file)))
          .flatMap(owner -> owner.stream())
          .filter(owner -> !SideFile.isOne(owner))
          .collect(Collectors.toSet());
    } catch (IOException noList) {
      return Set.of();
    }
  }

  private static void clearBeside(Disk disk, Path file) throws IOException {
    try (Claim claim = Claim.tried(disk, file)) {
      if (claim != null && !SideFile.POINTER.isBeside(file) && !SideFile.RECORD.isBeside(file)) {
        disk.remove(SideFile.PART.of(file));
      }
    }
  }
}
