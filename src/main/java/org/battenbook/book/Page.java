package org.battenbook.book;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.battenbook.source.Span;
import org.battenbook.syntax.Name;
import org.jspecify.annotations.Nullable;

/** A page: its lines, tables and rules, each in the order in which they are written. */
public final class Page {
  private final Name name;
  private String title;
  private final String note;
  private final Map<String, Line> lines = new LinkedHashMap<>();
  private int linesAbove;
  private final List<Table> tables = new ArrayList<>();
  private final List<Rule> rules = new ArrayList<>();

  Page(Name name, String title, String note) {
    this.name = name;
    this.title = title;
    this.note = note;
  }

  public Name name() {
    return name;
  }

  /** The title in quotes, or the name if there is none. */
  public String title() {
    return title;
  }

  public String note() {
    return note;
  }

  /** Where it is named first. */
  public Span origin() {
    return name.span();
  }

  public List<Line> lines() {
    return List.copyOf(lines.values());
  }

  /** The lines before the page's first table. */
  public List<Line> linesAbove() {
    return lines().subList(0, linesAbove);
  }

  /** The lines after the page's first table. */
  public List<Line> linesBelow() {
    return lines().subList(linesAbove, lines.size());
  }

  public @Nullable Line line(String key) {
    return lines.get(key);
  }

  public List<Table> tables() {
    return Collections.unmodifiableList(tables);
  }

  /** The requirements and cautions of the page itself, without those of its tables. */
  public List<Rule> rules() {
    return Collections.unmodifiableList(rules);
  }

  void add(Line line) {
    lines.put(line.name().key(), line);
    linesAbove = tables.isEmpty() ? lines.size() : linesAbove;
  }

  void add(Table table) {
    tables.add(table);
  }

  void add(Rule rule) {
    rules.add(rule);
  }

  void retitle(String newTitle) {
    title = newTitle;
  }

  @Override
  public String toString() {
    return name.text();
  }
}
