package org.battenbook.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.battenbook.bind.Spot;
import org.battenbook.bind.SpotFinder;
import org.battenbook.book.Book;
import org.battenbook.book.Column;
import org.battenbook.book.Line;
import org.battenbook.book.OpenedRows;
import org.battenbook.book.Page;
import org.battenbook.book.Place;
import org.battenbook.book.Rule;
import org.battenbook.book.Table;
import org.battenbook.check.CheckedBook;
import org.battenbook.check.CheckedPlace;
import org.battenbook.derive.Derivation;
import org.battenbook.derive.ErrorBudget;
import org.battenbook.derive.Feeds;
import org.battenbook.derive.PictureCautions;
import org.battenbook.derive.Why;
import org.battenbook.evaluate.Evaluator;
import org.battenbook.evaluate.Program;
import org.battenbook.evaluate.Refill;
import org.battenbook.evaluate.Results;
import org.battenbook.evaluate.RowCounting;
import org.battenbook.parse.FormulaParser;
import org.battenbook.source.Diagnostic;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.battenbook.syntax.Formula;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** A workbook with every line worked out. */
public final class Filled {
  private final Results results;
  private final CheckedBook checked;

  Filled(Results results) {
    this.results = results;
    this.checked = results.program().book();
  }

  public Book book() {
    return checked.book();
  }

  /** Kinds, forms and formulas of every place, for those who write it out in other shapes. */
  public CheckedBook checked() {
    return checked;
  }

  public Results results() {
    return results;
  }

  public String title() {
    return book().title();
  }

  public String file() {
    return book().source().name();
  }

  /** The value of a line. */
  public FilledValue value(Line line) {
    return value(new Spot(line, 0));
  }

  /** The value of a column in a row, counted from 0. */
  public FilledValue value(Column column, int row) {
    return value(new Spot(column, row));
  }

  public FilledValue value(Spot spot) {
    return new FilledValue(checked, spot, results.value(spot));
  }

  /**
   * The value that a person calls {@code saw kerf} or {@code top rail of Tide chart, north}.
   *
   * @throws UnknownPlace when the words name no value, or more than one
   */
  public FilledValue find(String place) {
    return value(spot(place));
  }

  /**
   * Where a value came from.
   *
   * @param place as a person says it
   * @throws UnknownPlace when the words name no value, or more than one
   */
  public Derivation why(String place) {
    return DeepStack.call(() -> Why.of(results, spot(place)));
  }

  /** The image files that are named and could not be looked into, each told at its name. */
  public List<Diagnostic> pictureCautions() {
    return PictureCautions.of(results);
  }

  /**
   * How far a value may be off, and by what.
   *
   * @param place as a person says it
   * @throws UnknownPlace when the words name no value, or more than one
   */
  public ErrorBudget errors(String place) {
    return ErrorBudget.of(results, spot(place));
  }

  /**
   * What depends on a value, the nearest first.
   *
   * @param place as a person says it
   * @throws UnknownPlace when the words name no value, or more than one
   */
  public List<Feeds.Fed> feeds(String place) {
    return Feeds.of(results, spot(place));
  }

  /**
   * The spot that a person means.
   *
   * @throws UnknownPlace when the words name no value, or more than one
   */
  public Spot spot(String place) {
    SpotFinder.Answer answer = new SpotFinder(book(), checked.keys()).find(place);
    if (!answer.isFound()) {
      throw new UnknownPlace(answer.message());
    }
    return answer.spots().get(0);
  }

  /** What is cut from what: every plan, each after those that it may build on. */
  public List<FilledPlan> plans() {
    return book().plans().stream().map(plan -> new FilledPlan(this, plan)).toList();
  }

  /** Every requirement in every row, holding or not. */
  public List<Verdict> requirements() {
    return verdicts(true);
  }

  /** Every caution in every row, firing or not, but for those that stand for every job. */
  public List<Verdict> cautions() {
    return verdicts(false).stream().filter(verdict -> !verdict.rule().isStanding()).toList();
  }

  /** The cautions that stand for every job, whatever its numbers. */
  public List<Verdict> standingCautions() {
    return verdicts(false).stream().filter(verdict -> verdict.rule().isStanding()).toList();
  }

  private List<Verdict> verdicts(boolean required) {
    List<Verdict> verdicts = new ArrayList<>();
    for (Page page : book().pages()) {
      page.rules().forEach(rule -> add(rule, required, 1, verdicts));
    }
    for (Table table : book().tables()) {
      table.rules().forEach(rule -> add(rule, required, table.rowCount(), verdicts));
    }
    return verdicts;
  }

  private void add(Rule rule, boolean required, int rowCount, List<Verdict> verdicts) {
    if (rule.required() == required) {
      for (int row = 0; row < rowCount; row++) {
        verdicts.add(new Verdict(results, rule, row));
      }
    }
  }

  /** The values that are at fault themselves; those that only wait on them are left out. */
  public List<FilledValue> faults() {
    List<FilledValue> faults = new ArrayList<>();
    checked.places().forEach(place -> addFaults(place.place(), faults));
    return faults;
  }

  private void addFaults(Place place, List<FilledValue> faults) {
    int rowCount = place instanceof Column column ? column.table().rowCount() : 1;
    for (int row = 0; row < rowCount; row++) {
      Spot spot = new Spot(place, row);
      if (results.value(spot) instanceof Value.Fault) {
        faults.add(value(spot));
      }
    }
  }

  /**
   * This workbook with another formula for a line or a column, only what it feeds worked out again.
   * The file it was read from stays as it is.
   *
   * @param formula as it would be written after the {@code =}
   */
  public Edit withFormula(Place place, String formula) {
    Diagnostics diagnostics = new Diagnostics();
    Formula parsed = parse(formula, diagnostics);
    CheckedBook edited = parsed == null ? checked : checked.withFormula(place, parsed, diagnostics);
    return refill(edited, place, -1, diagnostics);
  }

  /**
   * This workbook with another entry in one cell, only what it feeds worked out again. The file it
   * was read from stays as it is.
   *
   * @param entry as it would be written in the row; empty to leave the cell empty
   */
  public Edit withCell(Column column, int row, String entry) {
    Diagnostics diagnostics = new Diagnostics();
    Formula parsed = entry.isBlank() ? null : parse(entry, diagnostics);
    CheckedBook edited =
        diagnostics.hasFaults() ? checked : checked.withCell(column, row, parsed, diagnostics);
    return refill(edited, column, row, diagnostics);
  }

  private static @Nullable Formula parse(String text, Diagnostics diagnostics) {
    SourceText source = SourceText.of("edit", text);
    return FormulaParser.parse(source, source.span(0, text.length()), diagnostics);
  }

  private Edit refill(CheckedBook edited, Place place, int row, Diagnostics diagnostics) {
    if (diagnostics.hasFaults()) {
      return new Edit(null, List.of(), diagnostics.inOrder());
    }
    Optional<Set<Place>> changed = edited.changesFrom(checked);
    Program program =
        changed.isPresent()
            ? results.program().edited(edited, changed.get(), diagnostics)
            : Program.compile(edited, diagnostics);
    if (program == null) {
      return new Edit(null, List.of(), diagnostics.inOrder());
    }
    Refill.Refilled edit =
        changed.isEmpty()
            ? new Refill.Refilled(Evaluator.fill(program), all(edited))
            : Refill.after(
                program,
                results,
                changed.get(),
                one -> one == place || edited.isBeside(one) ? row : -1);
    OpenedRows opened = RowCounting.count(edit.results(), diagnostics);
    if (!opened.equals(RowCounting.count(results, new Diagnostics()))) {
      diagnostics.fault(
          "edit-opens-rows",
          place.origin(),
          "with this, other rows would be opened from those of a table: "
              + "'%s' says how many".formatted(place.words()),
          "write it into the file, and read the job anew");
    }
    if (diagnostics.hasFaults()) {
      return new Edit(null, List.of(), diagnostics.inOrder());
    }
    return new Edit(new Filled(edit.results()), edit.ran(), diagnostics.inOrder());
  }

  /** A first tolerance, or a last, moves how all is ordered. */
  private static List<Place> all(CheckedBook book) {
    return book.places().stream().map(CheckedPlace::place).toList();
  }
}
