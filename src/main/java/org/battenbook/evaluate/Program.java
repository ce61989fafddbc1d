package org.battenbook.evaluate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.battenbook.bind.RowKeys;
import org.battenbook.book.Column;
import org.battenbook.book.Place;
import org.battenbook.book.Rule;
import org.battenbook.book.Table;
import org.battenbook.check.CheckedBook;
import org.battenbook.check.CheckedFormula;
import org.battenbook.check.CheckedPlace;
import org.battenbook.source.Diagnostics;
import org.battenbook.syntax.Expression;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** A checked book compiled: a plan for each place, and the order to run them in. */
public final class Program {
  private final CheckedBook book;
  private final Slots slots;
  private final List<Stage> stages;
  private final List<PlacePlan> plans;
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

  private Program(CheckedBook book, Slots slots, List<Stage> stages, List<PlacePlan> plans) {
    this.book = book;
    this.slots = slots;
    this.stages = stages;
    this.plans = plans;
  }

  /**
   * Compiles a book that has passed its check.
   *
   * @param diagnostics takes the circles among formulas, and what is too much work
   * @return the program; not to be run when there were faults
   */
  public static @Nullable Program compile(CheckedBook book, Diagnostics diagnostics) {
    Slots slots = new Slots(book);
    List<Stage> stages = Ordering.order(book, slots, diagnostics);
    ProgramSize size = new ProgramSize(diagnostics);
    size.checkFormulas(book.places());
    if (diagnostics.hasFaults()) {
      return null;
    }
    Program program = new Program(book, slots, stages, new ArrayList<>(slots.count()));
    book.places().forEach(checked -> program.plans.add(program.compile(checked)));
    size.checkWork(program.plans);
    return diagnostics.hasFaults() ? null : program;
  }

  /**
   * This program for a book of the same places after an edit.
   *
   * @param changed the places that it changed
   * @param diagnostics takes a circle that the edit closes, and what is too much work
   */
  public @Nullable Program edited(CheckedBook edited, Set<Place> changed, Diagnostics diagnostics) {
    boolean asBefore =
        changed.stream().allMatch(p -> edited.place(p).needs().equals(plan(p).needs()));
    List<Stage> order = asBefore ? stages : Ordering.order(edited, slots, diagnostics);
    if (diagnostics.hasFaults()) {
      return null;
    }
    Program program = new Program(edited, slots, order, new ArrayList<>(plans));
    changed.forEach(
        place -> program.plans.set(slots.of(place).number(), program.compile(edited.place(place))));
    ProgramSize size = new ProgramSize(diagnostics);
    size.checkWork(program.plans);
    return diagnostics.hasFaults() ? null : program;
  }

  private PlacePlan compile(CheckedPlace checked) {
    CheckedFormula formula = checked.formula();
    Plan plan = formula == null ? null : PlanCompiler.compile(book, slots, formula);
    Map<Integer, Plan> cells = new HashMap<>();
    Map<CheckedFormula, Plan> shared = new HashMap<>();
    checked
        .cells()
        .formulas()
        .forEach((row, cell) -> cells.put(row, compileCell(checked, row, cell, plan, shared)));
    RowKeys keys = checked.kind() instanceof Kind.RowOf rowOf ? book.keys(tableOf(rowOf)) : null;
    return new PlacePlan(slots.of(checked.place()), checked, plan, cells, keys);
  }

  private Table tableOf(Kind.RowOf rowOf) {
    return Objects.requireNonNull(book.book().table(rowOf.table()));
  }

  /** The plan of a cell; where rows share its formula, they share the plan. */
  private Plan compileCell(
      CheckedPlace checked,
      int row,
      CheckedFormula cell,
      @Nullable Plan formula,
      Map<CheckedFormula, Plan> shared) {
    Value written = checked.cells().value(row);
    if (written == null) {
      return shared.computeIfAbsent(cell, c -> PlanCompiler.compileCell(book, slots, c, formula));
    }
    Plan inherited = new ConstantPlan(cell.expression(), written);
    return PlanCompiler.compileCell(book, slots, cell, inherited);
  }

  public CheckedBook book() {
    return book;
  }

  Slots slots() {
    return slots;
  }

  List<Stage> stages() {
    return stages;
  }

  PlacePlan plan(Slot slot) {
    return plans.get(slot.number());
  }

  PlacePlan plan(Place place) {
    return plan(slots.of(place));
  }

  /** How many values a place has: one for a line, as many as rows for a column. */
  static int rowCount(Place place) {
    return place instanceof Column column ? column.table().rowCount() : 1;
  }

  Plan message(Rule rule) {
    return messages.computeIfAbsent(rule, r -> PlanCompiler.compile(book, slots, book.message(r)));
  }

  /** The plan of a formula of this book, to be run with slots. */
  Plan compile(CheckedFormula formula) {
    return runAgain.computeIfAbsent(
        new Part(formula, null), p -> PlanCompiler.compile(book, slots, formula));
  }

  /** The plan of a part of a formula. */
  Plan compile(CheckedFormula formula, Expression part) {
    return runAgain.computeIfAbsent(
        new Part(formula, part), p -> PlanCompiler.compile(book, slots, formula, part));
  }
}
