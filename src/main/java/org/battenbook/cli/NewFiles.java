package org.battenbook.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.battenbook.saving.Content;
import org.battenbook.saving.WholeFile;

/** Files that a command lays into a folder of the person's choice, replacing nothing. */
final class NewFiles {
  private final Path folder;
  private final Map<Path, byte[]> contents = new LinkedHashMap<>();

  private NewFiles(Path folder) {
    this.folder = folder;
  }

  /**
   * For a folder as a person named it, which may not be there yet.
   *
   * @throws NoSuchChoice where no folder can have that name
   */
  static NewFiles in(String folder) {
    try {
      Path path = Path.of(folder);
      if (Files.exists(path) && !Files.isDirectory(path)) {
        throw new NoSuchChoice("'%s' is a file; name a folder".formatted(folder));
      }
      return new NewFiles(path);
    } catch (InvalidPathException invalid) {
      throw new NoSuchChoice("'%s' cannot be a folder's name".formatted(folder));
    }
  }

  /**
   * Adds a file.
   *
   * @param name its path in the folder
   */
  NewFiles with(String name, byte[] content) {
    contents.put(folder.resolve(name), content);
    return this;
  }

  Path folder() {
    return folder;
  }

  /** Whether the folder holds nothing yet, or is not there. */
  boolean isFolderEmpty() throws IOException {
    if (!Files.exists(folder)) {
      return true;
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.findAny().isEmpty();
    }
  }

  /** The files that are there with another content. */
  List<Path> others() throws IOException {
    return contents.keySet().stream().filter(this::isOther).toList();
  }

  private boolean isOther(Path file) {
    try {
      return Files.exists(file) && !Arrays.equals(Files.readAllBytes(file), contents.get(file));
    } catch (IOException unreadable) {
      return true;
    }
  }

  /** Writes all of them. */
  void write() throws IOException {
    for (Map.Entry<Path, byte[]> file : contents.entrySet()) {
      Files.createDirectories(file.getKey().toAbsolutePath().getParent());
      WholeFile.write(file.getKey(), List.of(), Content.of(file.getValue()));
    }
  }
}
