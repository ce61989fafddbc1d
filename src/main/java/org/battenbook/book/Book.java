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

/** A job and all files that it follows, as one model. */
public final class Book {
  private final SourceText source;
  private final String title;
  private final @Nullable Name currency;
  private final @Nullable ShownAs lengths;

  /** The files that each file sees. */
  private final Map<SourceText, Set<SourceText>> seen;

  private final List<Edition> editions;
  private final Pictures pictures;
  private final Map<String, Page> pages = new LinkedHashMap<>();
  private List<Page> first = List.of();
  private final Map<String, Table> tables = new LinkedHashMap<>();
  private final Map<String, PlanStatement> plans = new LinkedHashMap<>();

  /** The workbook that each generated text belongs to. */
  private final Map<SourceText, SourceText> generated = new HashMap<>();

  private final Map<String, FunctionDefinition> functions = new LinkedHashMap<>();

  Book(
      SourceText source,
      String title,
      @Nullable Name currency,
      @Nullable ShownAs lengths,
      Map<SourceText, Set<SourceText>> seen,
      List<Edition> editions,
      Pictures pictures) {
    this.source = source;
    this.title = title;
    this.currency = currency;
    this.lengths = lengths;
    this.seen = new LinkedHashMap<>(seen);
    this.editions = List.copyOf(editions);
    this.pictures = pictures;
  }

  /** The job's own text. */
  public SourceText source() {
    return source;
  }

  /** The editions of the files that state one, in the order of {@link #sources}. */
  public List<Edition> editions() {
    return editions;
  }

  /** The image files that texts in the job name. */
  public Pictures pictures() {
    return pictures;
  }

  public String title() {
    return title;
  }

  /** The currency of the last file that names one, in the order of {@link #sources}; or null. */
  public @Nullable Name currency() {
    return currency;
  }

  /**
   * The form of lengths of the last file that names one, in the order of {@link #sources}; or null.
   */
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

  /** The texts of all files, each after the files that it follows; the job's own text is last. */
  public List<SourceText> sources() {
    return List.copyOf(seen.keySet());
  }

  /**
   * Whether a formula in one text can use what another text defines: only texts of the same file or
   * of files that it follows.
   */
  public boolean sees(SourceText from, SourceText other) {
    return seen.getOrDefault(writtenIn(from), Set.of()).contains(writtenIn(other));
  }

  /**
   * The workbook that a generated or edited text belongs to; for any other text, the text itself.
   */
  private SourceText writtenIn(SourceText text) {
    SourceText workbook = generated.get(text);
    Span statement = text.statement();
    return workbook != null ? workbook : statement != null ? writtenIn(statement.source()) : text;
  }

  /** Makes a generated text part of a workbook, for what it sees and what sees it. */
  void addGenerated(SourceText text, SourceText workbook) {
    generated.put(text, writtenIn(workbook));
  }

  /** The plans in the order in which they are written; a plan can use tables of those before it. */
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

  /** Sets the pages to show before all others. */
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
