package org.battenbook.book;

import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.FunctionDefinition;
import org.battenbook.syntax.Name;
import org.battenbook.syntax.ShownAs;
import org.jspecify.annotations.Nullable;

/** A job with everything that it follows, as one model. */
public final class Book {
  private final SourceText source;
  private final String title;
  private final @Nullable Name currency;
  private final @Nullable ShownAs lengths;
  private final Map<SourceText, Set<SourceText>> seen;
  private final Pictures pictures;
  private final Map<String, Page> pages = new LinkedHashMap<>();
  private List<Page> first = List.of();
  private final Map<String, Table> tables = new LinkedHashMap<>();
  private final Map<String, PlanStatement> plans = new LinkedHashMap<>();
  private final Map<SourceText, SourceText> laidOut = new HashMap<>();
  private final Map<String, FunctionDefinition> functions = new LinkedHashMap<>();

  Book(
      SourceText source,
      String title,
      @Nullable Name currency,
      @Nullable ShownAs lengths,
      Map<SourceText, Set<SourceText>> seen,
      Pictures pictures) {
    this.source = source;
    this.title = title;
    this.currency = currency;
    this.lengths = lengths;
    this.seen = new LinkedHashMap<>(seen);
    this.pictures = pictures;
  }

  /** The job's own text. */
  public SourceText source() {
    return source;
  }

  /** The image files that the job's texts name. */
  public Pictures pictures() {
    return pictures;
  }

  public String title() {
    return title;
  }

  /** The currency that the nearest workbook names; absent where none does. */
  public @Nullable Name currency() {
    return currency;
  }

  /** How lengths are shown, as the nearest workbook says; absent where none does. */
  public @Nullable ShownAs lengths() {
    return lengths;
  }

  /** The pages in the order in which they are shown. */
  public Collection<Page> pages() {
    Set<Page> inOrder = new LinkedHashSet<>(first);
    inOrder.addAll(pages.values());
    return List.copyOf(inOrder);
  }

  public @Nullable Page page(String key) {
    return pages.get(key);
  }

  public Collection<Table> tables() {
    return List.copyOf(tables.values());
  }

  public @Nullable Table table(String key) {
    return tables.get(key);
  }

  public Collection<FunctionDefinition> functions() {
    return List.copyOf(functions.values());
  }

  public @Nullable FunctionDefinition function(String key) {
    return functions.get(key);
  }

  /** The texts the book is made of, those that are followed before those that follow them. */
  public List<SourceText> sources() {
    return List.copyOf(seen.keySet());
  }

  /** Whether a formula written in one text sees what another defines: its own, or followed. */
  public boolean sees(SourceText from, SourceText other) {
    return seen.getOrDefault(writtenIn(from), Set.of()).contains(writtenIn(other));
  }

  /** The workbook that a text was laid out for, or typed into; else the text itself. */
  private SourceText writtenIn(SourceText text) {
    SourceText workbook = laidOut.get(text);
    Span statement = text.statement();
    return workbook != null ? workbook : statement != null ? writtenIn(statement.source()) : text;
  }

  /** Lets a text that was laid out see what the workbook sees that has it, and be seen as that. */
  void addLaidOut(SourceText text, SourceText workbook) {
    laidOut.put(text, writtenIn(workbook));
  }

  /** The plans, each after those that it may build on. */
  public Collection<PlanStatement> plans() {
    return List.copyOf(plans.values());
  }

  public @Nullable PlanStatement plan(String key) {
    return plans.get(key);
  }

  void add(PlanStatement plan) {
    plans.put(plan.name().key(), plan);
  }

  void add(Page page) {
    pages.put(page.name().key(), page);
  }

  /** Has some pages shown before all others. */
  void showFirst(List<Page> shownFirst) {
    first = List.copyOf(shownFirst);
  }

  void add(Table table) {
    tables.put(table.key(), table);
  }

  void add(FunctionDefinition function) {
    functions.put(function.name().key(), function);
  }
}
