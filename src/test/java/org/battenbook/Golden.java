package org.battenbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Texts that a person has read and found good. They are written anew only with {@code
 * -Dgolden=write}, and what changed is then read again.
 */
public final class Golden {
  private static final Path FOLDER = Path.of("src/test/resources/golden");

  private Golden() {}

  /** The path of a golden file or folder, as the command line can name it. */
  public static Path path(String name) {
    return FOLDER.resolve(name);
  }

  /** Compares a text with the golden file of that name. */
  public static void assertSame(String name, String actual) {
    Path file = path(name);
    try {
      if ("write".equals(System.getProperty("golden"))) {
        Files.createDirectories(file.getParent());
        boolean same = Files.exists(file) && actual.equals(Files.readString(file));
        Files.writeString(file, actual);
        // Compared with itself it would always pass.
        assertThat(same).as("%s is written anew: read what changed, then run again", file).isTrue();
      }
      assertThat(actual).isEqualTo(Files.readString(file));
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
