package org.battenbook.evaluate;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReferenceArray;
import org.battenbook.book.Place;
import org.battenbook.book.Rule;
import org.battenbook.book.Table;
import org.battenbook.check.CheckedBook;
import org.battenbook.check.CheckedFormula;
import org.battenbook.check.CheckedPlace;
import org.battenbook.check.Need;
import org.battenbook.source.Diagnostics;
import org.battenbook.syntax.Expression;
import org.battenbook.tolerance.Tolerances;
import org.battenbook.value.Kind;
import org.jspecify.annotations.Nullable;

/** A checked book, compiled: what works out each place, and the order to run it in. */
public final class Program {
  private final Tolerances tolerances;
  private final CheckedBook book;
  private final Slots slots;
  private final List<Stage> stages;
  private final AtomicReferenceArray<@Nullable CompiledPlace> compiled;
  private final List<Set<Need>> needs;

  /** The needs of each place by slots, made when an edit first asks for them. */
  private final AtomicReferenceArray<@Nullable List<Edge>> edges;

  /**
   * The places that name rows which are known only while filling; absent until they are asked for.
   */
  private volatile @Nullable Set<Place> naming;

  private final Map<Rule, FormulaNode> messages = new ConcurrentHashMap<>();

  /**
   * The formulas that are run again, each compiled once, since results keep groups of rows by node.
   */
  private final Map<Part, FormulaNode> runAgain = new ConcurrentHashMap<>();

  private record Part(CheckedFormula formula, @Nullable Expression part) {
    /** Nodes are compared by identity: equal words may stand in several formulas. */
    @Override
    @SuppressWarnings("ReferenceEquality")
    public boolean equals(@Nullable Object other) {
      return other instanceof Part that && that.formula == formula && that.part == part;
    }

    @Override
    public int hashCode() {
      return 31 * System.identityHashCode(formula) + System.identityHashCode(part);
    }
  }

  private Program(Tolerances tolerances, Slots slots, List<Stage> stages, List<Set<Need>> needs) {
    this.tolerances = tolerances;
    this.book = tolerances.book();
    this.slots = slots;
    this.stages = stages;
    this.needs = needs;
    this.compiled = new AtomicReferenceArray<>(slots.count());
    this.edges = new AtomicReferenceArray<>(slots.count());
  }

  /**
   * Orders a book that has passed its check. A formula is compiled when it is first run: columns of
   * tables without rows never are.
   *
   * @param diagnostics takes the circles among formulas, and formulas that are too large
   * @return absent when there were faults
   */
  public static @Nullable Program compile(Tolerances tolerances, Diagnostics diagnostics) {
    CheckedBook book = tolerances.book();
    Slots slots = new Slots(book);
    RowNeeds rowNeeds = new RowNeeds(book);
    List<Set<Need>> needs = book.places().stream().map(rowNeeds::of).toList();
    List<Stage> stages = Ordering.order(book, slots, needs, diagnostics);
    ProgramSize.check(book.places(), diagnostics);
    return diagnostics.hasFaults() ? null : new Program(tolerances, slots, stages, needs);
  }

  /**
   * This program for a book of the same places after an edit.
   *
   * @param changed the places that it changed
   * @param diagnostics takes a circle that the edit closes
   */
  public @Nullable Program edited(
      Tolerances tolerancesAfter, Set<Place> changed, Diagnostics diagnostics) {
    CheckedBook edited = tolerancesAfter.book();
    List<Set<Need>> after = new ArrayList<>(needs);
    RowNeeds rowNeeds = new RowNeeds(edited);
    changed.forEach(p -> after.set(slots.of(p).number(), rowNeeds.of(edited.place(p))));
    List<Stage> order =
        after.equals(needs) ? stages : Ordering.order(edited, slots, after, diagnostics);
    if (diagnostics.hasFaults()) {
      return null;
    }
    Program program = new Program(tolerancesAfter, slots, order, after);
    for (int i = 0; i < slots.count(); i++) {
      program.compiled.set(i, compiled.get(i));
      program.edges.set(i, edges(slots.at(i)));
    }
    changed.forEach(place -> program.forget(slots.of(place)));
    Set<Place> named = new LinkedHashSet<>(naming());
    named.removeAll(changed);
    named.addAll(program.naming(changed));
    program.naming = named;
    return program;
  }

  /** Drops what was compiled of a place before it was edited. */
  private void forget(Slot slot) {
    compiled.set(slot.number(), null);
    edges.set(slot.number(), null);
  }

  private CompiledPlace compile(CheckedPlace checked) {
    CheckedFormula formula = checked.formula();
    FormulaNode node = formula == null ? null : FormulaCompiler.compile(tolerances, slots, formula);
    Table named = checked.kind() instanceof Kind.RowOf rowOf ? tableOf(rowOf) : null;
    return new CompiledPlace(slots.of(checked.place()), checked, node, this, named);
  }

  private Table tableOf(Kind.RowOf rowOf) {
    return Objects.requireNonNull(book.book().table(rowOf.table()));
  }

  /**
   * Compiles a formula that stands in a cell.
   *
   * @param inherited what the cell's own name means in it; absent where it has no value otherwise
   */
  FormulaNode compileCell(CheckedFormula cell, @Nullable FormulaNode inherited) {
    return FormulaCompiler.compileCell(tolerances, slots, cell, inherited);
  }

  /** The steps that a place takes in a fill with these rows. */
  long steps(Slot slot, Results results) {
    return results.valueCount(slot.place()) == 0 ? 0 : compiled(slot).steps(results);
  }

  /** The book, with a place for each error bound. */
  public CheckedBook book() {
    return book;
  }

  public Tolerances tolerances() {
    return tolerances;
  }

  Slots slots() {
    return slots;
  }

  List<Stage> stages() {
    return stages;
  }

  CompiledPlace compiled(Slot slot) {
    CompiledPlace known = compiled.get(slot.number());
    if (known == null) {
      known = compile(book.place(slot.place()));
      compiled.set(slot.number(), known);
    }
    return known;
  }

  /** Everything that the values of a place are worked out from. */
  Set<Need> needs(Slot slot) {
    return needs.get(slot.number());
  }

  /** The same, by slots. */
  List<Edge> edges(Slot slot) {
    List<Edge> known = edges.get(slot.number());
    if (known == null) {
      known =
          needs(slot).stream().map(need -> new Edge(slots.of(need.place()), need.reach())).toList();
      edges.set(slot.number(), known);
    }
    return known;
  }

  /** The places that name rows of opened or planned tables. */
  Set<Place> naming() {
    Set<Place> known = naming;
    if (known == null) {
      known = naming(book.places().stream().map(CheckedPlace::place).toList());
      naming = known;
    }
    return known;
  }

  private Set<Place> naming(Collection<Place> places) {
    Set<Place> found = new LinkedHashSet<>();
    for (Place place : places) {
      if (!book.place(place).lateNames().isEmpty()) {
        found.add(place);
      }
    }
    return found;
  }

  CompiledPlace compiled(Place place) {
    return compiled(slots.of(place));
  }

  FormulaNode message(Rule rule) {
    return messages.computeIfAbsent(
        rule, r -> FormulaCompiler.compile(tolerances, slots, book.message(r)));
  }

  /** A formula of this book, compiled to be run again with its values kept. */
  FormulaNode compile(CheckedFormula formula) {
    return runAgain.computeIfAbsent(
        new Part(formula, null), p -> FormulaCompiler.compile(tolerances, slots, formula));
  }

  /** A part of a formula, compiled to be run again. */
  FormulaNode compile(CheckedFormula formula, Expression part) {
    return runAgain.computeIfAbsent(
        new Part(formula, part), p -> FormulaCompiler.compile(tolerances, slots, formula, part));
  }
}
