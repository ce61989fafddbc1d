package org.battenbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;

/**
 * A table of the language's definition, from {@code src/test/resources/spec}: one heading line,
 * then one case a line, columns parted by tabs, the last saying why the case is there.
 */
public final class SpecTable {
  private final String name;
  private final List<String> lines;

  private SpecTable(String name, List<String> lines) {
    this.name = name;
    this.lines = lines;
  }

  /** Reads {@code spec/name.tsv}. */
  public static SpecTable read(String name) {
    String path = "/spec/" + name + ".tsv";
    try (InputStream in = SpecTable.class.getResourceAsStream(path)) {
      assertThat(in).as(path).isNotNull();
      return new SpecTable(
          name, new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** One test for each case, named by its line and its reason. */
  public Stream<DynamicTest> each(Consumer<List<String>> check) {
    int columns = cells(0).size();
    return IntStream.range(1, lines.size())
        .mapToObj(
            i ->
                DynamicTest.dynamicTest(
                    name + ":" + (i + 1) + " " + cells(i).get(columns - 1),
                    () -> {
                      assertThat(cells(i)).as("columns of line %d", i + 1).hasSize(columns);
                      check.accept(cells(i));
                    }));
  }

  /** Every case, as its cells. */
  public List<List<String>> cases() {
    return IntStream.range(1, lines.size()).mapToObj(this::cells).toList();
  }

  private List<String> cells(int line) {
    return List.of(lines.get(line).split("\t", -1));
  }
}
