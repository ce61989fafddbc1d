package org.battenbook.bound;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** LANGUAGE.md names the bounds that the program keeps: all of them, and no other. */
class BoundTest {
  private static final Path LANGUAGE = Path.of("workbooks", "LANGUAGE.md");

  @Test
  void the_language_names_every_bound_as_it_is() throws IOException {
    List<String> rows =
        Files.readAllLines(LANGUAGE).stream()
            .dropWhile(line -> !line.equals("## Bounds"))
            .filter(line -> line.startsWith("| "))
            .skip(2)
            .toList();
    assertThat(rows)
        .containsExactlyElementsOf(
            Arrays.stream(Bound.values())
                .map(bound -> "| %s | %s |".formatted(bound.what(), bound.shown()))
                .toList());
  }
}
