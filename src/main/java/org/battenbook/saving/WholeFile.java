package org.battenbook.saving;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;

/** Writes a file whole or not at all. */
public final class WholeFile {
  private WholeFile() {}

  /**
   * Writes a file; an earlier one of that name stays as it was until the new one is whole. A link
   * stays a link. What earlier runs that were killed left in the folder is removed.
   *
   * @param inUse files that must not be replaced, under whatever name
   * @throws NotWritten when it cannot be written; nothing has changed then
   */
  public static void write(Path file, Collection<Path> inUse, Content content) throws NotWritten {
    write(Disk.REAL, file, inUse, content);
  }

  static void write(Disk disk, Path file, Collection<Path> inUse, Content content)
      throws NotWritten {
    try {
      refuse(file, inUse);
      Path place = place(file);
      Leftovers.clear(disk, SideFile.folder(place));
      try (Claim claim = Claim.of(disk, place)) {
        StagedFile.of(disk, claim.file(), StagedFile.Readers.AS_BEFORE, content).synced().put();
        disk.syncFolder(SideFile.folder(place));
      }
    } catch (IOException failure) {
      throw NotWritten.of(file, failure);
    }
  }

  /**
   * Writes a file that nobody but its owner may read, and that is not missed when the machine stops
   * before it is on the disk. While another process writes it, nothing happens.
   *
   * @throws NotWritten when it cannot be written; nothing has changed then
   */
  public static void writeForOwner(Path file, byte[] content) throws NotWritten {
    try (Claim claim = Claim.tried(Disk.REAL, file)) {
      if (claim != null) {
        StagedFile.of(Disk.REAL, file, StagedFile.Readers.OWNER, Content.of(content)).put();
      }
    } catch (IOException failure) {
      throw NotWritten.of(file, failure);
    }
  }

  private static void refuse(Path file, Collection<Path> inUse) throws IOException {
    if (Files.isDirectory(file)) {
      throw new NotWritten(file, "it is a folder; name a file in it");
    }
    if (!Files.exists(file)) {
      if (Files.isSymbolicLink(file)) {
        throw new NotWritten(file, "it is a link to a file that does not exist; remove it");
      }
      return;
    }
    if (!Files.isRegularFile(file)) {
      throw new NotWritten(file, "it is a device or a pipe; name an ordinary file");
    }
    for (Path used : inUse) {
      if (Files.exists(used) && Files.isSameFile(used, file)) {
        throw new NotWritten(file, "it is a file of the job; name another file");
      }
    }
    if (!Files.isWritable(file)) {
      throw new NotWritten(file, "it exists and is write-protected");
    }
  }

  /** Where a file really is, with no link on the way. */
  private static Path place(Path file) throws IOException {
    return Files.exists(file) ? file.toRealPath() : SideFile.named(file);
  }
}
