package org.battenbook.evaluate;

import java.util.ArrayList;
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

/** A checked book compiled: a plan for each place, and the order to run them in. */
public final class Program {
  private final Tolerances tolerances;
  private final CheckedBook book;
  private final Slots slots;
  private final List<Stage> stages;
  private final AtomicReferenceArray<@Nullable PlacePlan> plans;
  private final List<Set<Need>> needs;
  private final Map<Rule, Plan> messages = new ConcurrentHashMap<>();

  /** Plans of formulas that are run again, each made once: what they group rows by is kept. */
  private final Map<Part, Plan> runAgain = new ConcurrentHashMap<>();

  private record Part(CheckedFormula formula, @Nullable Expression part) {
    /** Nodes are told apart by what they are, not by what they say. */
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
    this.plans = new AtomicReferenceArray<>(slots.count());
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
      program.plans.set(i, plans.get(i));
    }
    changed.forEach(place -> program.plans.set(slots.of(place).number(), null));
    return program;
  }

  private PlacePlan compile(CheckedPlace checked) {
    CheckedFormula formula = checked.formula();
    Plan plan = formula == null ? null : PlanCompiler.compile(tolerances, slots, formula);
    Table named = checked.kind() instanceof Kind.RowOf rowOf ? tableOf(rowOf) : null;
    return new PlacePlan(slots.of(checked.place()), checked, plan, this, named);
  }

  private Table tableOf(Kind.RowOf rowOf) {
    return Objects.requireNonNull(book.book().table(rowOf.table()));
  }

  /**
   * The plan of a formula that stands in a cell.
   *
   * @param inherited what the cell's own name means in it; absent where it has no value otherwise
   */
  Plan compileCell(CheckedFormula cell, @Nullable Plan inherited) {
    return PlanCompiler.compileCell(tolerances, slots, cell, inherited);
  }

  /** The steps that a place takes in a fill with these rows. */
  long steps(Slot slot, Results results) {
    return results.valueCount(slot.place()) == 0 ? 0 : plan(slot).steps(results);
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

  PlacePlan plan(Slot slot) {
    PlacePlan known = plans.get(slot.number());
    if (known == null) {
      known = compile(book.place(slot.place()));
      plans.set(slot.number(), known);
    }
    return known;
  }

  /** All that the values of a place are worked out from. */
  Set<Need> needs(Slot slot) {
    return needs.get(slot.number());
  }

  PlacePlan plan(Place place) {
    return plan(slots.of(place));
  }

  Plan message(Rule rule) {
    return messages.computeIfAbsent(
        rule, r -> PlanCompiler.compile(tolerances, slots, book.message(r)));
  }

  /** The plan of a formula of this book, to be run with slots. */
  Plan compile(CheckedFormula formula) {
    return runAgain.computeIfAbsent(
        new Part(formula, null), p -> PlanCompiler.compile(tolerances, slots, formula));
  }

  /** The plan of a part of a formula. */
  Plan compile(CheckedFormula formula, Expression part) {
    return runAgain.computeIfAbsent(
        new Part(formula, part), p -> PlanCompiler.compile(tolerances, slots, formula, part));
  }
}
