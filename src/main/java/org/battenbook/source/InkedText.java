package org.battenbook.source;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A line for people, in parts that each have an ink. The texts are as they came, from workbooks
 * perhaps: whoever prints them makes them {@linkplain DisplayText#safe safe}.
 */
public record InkedText(List<Part> parts) {

  /** A text in one ink. */
  public record Part(Ink ink, String text) {}

  public InkedText {
    parts = List.copyOf(parts);
  }

  public static InkedText of(String text) {
    return of(Ink.PLAIN, text);
  }

  public static InkedText of(Ink ink, String text) {
    return new InkedText(List.of(new Part(ink, text)));
  }

  public InkedText and(String text) {
    return and(Ink.PLAIN, text);
  }

  public InkedText and(Ink ink, String text) {
    List<Part> longer = new ArrayList<>(parts);
    longer.add(new Part(ink, text));
    return new InkedText(longer);
  }

  /** The same line further to the right; a blank line stays blank. */
  public InkedText indented(String blanks) {
    if (text().isEmpty()) {
      return this;
    }
    List<Part> longer = new ArrayList<>(parts);
    longer.add(0, new Part(Ink.PLAIN, blanks));
    return new InkedText(longer);
  }

  /** The line without its inks. */
  public String text() {
    return parts.stream().map(Part::text).collect(Collectors.joining());
  }
}
