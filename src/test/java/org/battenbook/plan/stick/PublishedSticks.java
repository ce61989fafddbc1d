package org.battenbook.plan.stick;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.battenbook.number.Rational;

/** The instances of {@code sticks/index.csv}; where they come from stands in its SOURCES.md. */
public final class PublishedSticks {
  private PublishedSticks() {}

  /** An instance, and the fewest sticks that it needs. */
  record Known(String name, int optimum) {}

  static List<Known> all() {
    return lines("index.csv").stream().skip(1).map(PublishedSticks::known).toList();
  }

  private static Known known(String line) {
    String[] cells = line.split(",", -1);
    return new Known(cells[0], Integer.parseInt(cells[4]));
  }

  public static StickJob job(String name) {
    List<String> lines = lines(name + ".csp");
    List<Part> parts = new ArrayList<>();
    for (String line : lines.subList(2, lines.size())) {
      String[] numbers = line.trim().split("\\s+", -1);
      parts.add(
          new Part("of " + numbers[0], Rational.parse(numbers[0]), Integer.parseInt(numbers[1])));
    }
    Rational length = Rational.parse(lines.get(1).trim());
    return new StickJob(
        parts, List.of(Stock.bought("stick", length, Rational.ONE)), StickRules.bare());
  }

  private static List<String> lines(String file) {
    try (InputStream in = PublishedSticks.class.getResourceAsStream("/sticks/" + file)) {
      byte[] bytes = Objects.requireNonNull(in, file).readAllBytes();
      return new String(bytes, StandardCharsets.UTF_8).lines().filter(l -> !l.isBlank()).toList();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
