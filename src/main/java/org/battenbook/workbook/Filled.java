package org.battenbook.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.battenbook.bind.Rows;
import org.battenbook.bind.Spot;
import org.battenbook.bind.SpotFinder;
import org.battenbook.book.Book;
import org.battenbook.book.Column;
import org.battenbook.book.FollowedFiles;
import org.battenbook.book.Line;
import org.battenbook.book.Page;
import org.battenbook.book.Place;
import org.battenbook.book.Rule;
import org.battenbook.book.Table;
import org.battenbook.check.CheckedBook;
import org.battenbook.derive.Derivation;
import org.battenbook.derive.ErrorBudget;
import org.battenbook.derive.Feeds;
import org.battenbook.derive.PictureCautions;
import org.battenbook.derive.Why;
import org.battenbook.edit.BookRevision;
import org.battenbook.edit.CellEdit;
import org.battenbook.edit.EditRefused;
import org.battenbook.edit.FormulaEdit;
import org.battenbook.edit.WorkbookEdit;
import org.battenbook.evaluate.Refill;
import org.battenbook.evaluate.Results;
import org.battenbook.evaluate.RowPlanner;
import org.battenbook.source.Diagnostic;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.battenbook.value.Value;

/** A workbook with every line worked out. */
public final class Filled {
  private final Results results;
  private final CheckedBook checked;
  private final Reading reading;

  /** Small edits since the texts were read, which the texts do not hold yet. */
  private final List<WorkbookEdit> edits;

  Filled(Results results, Reading reading, List<WorkbookEdit> edits) {
    this.results = results;
    this.checked = results.program().book();
    this.reading = reading;
    this.edits = List.copyOf(edits);
  }

  public Book book() {
    return checked.book();
  }

  /**
   * Kinds, forms and formulas of every place, for whoever writes the workbook out in another form.
   */
  public CheckedBook checked() {
    return checked;
  }

  public Results results() {
    return results;
  }

  /** The rows of a table. */
  public Rows rows(Table table) {
    return results.rows(table);
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
    return new FilledValue(results.decisions(), spot, results.value(spot));
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
    return why(spot(place));
  }

  /** Where the value of a spot came from. */
  public Derivation why(Spot spot) {
    return DeepStack.call(() -> Why.of(results, spot));
  }

  /** A caution for each image file that is named and cannot be read. */
  public List<Diagnostic> pictureCautions() {
    return PictureCautions.of(results);
  }

  /**
   * How far a value may be off, and which tolerances make it so.
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
    SpotFinder.Answer answer = new SpotFinder(book(), results).find(place);
    if (!answer.isFound()) {
      throw new UnknownPlace(answer.message());
    }
    return answer.spots().get(0);
  }

  /** Every plan, each after the plans it may build on. */
  public List<FilledPlan> plans() {
    return book().plans().stream().map(plan -> new FilledPlan(this, plan)).toList();
  }

  /** Every requirement in every row, holding or not. */
  public List<Verdict> requirements() {
    return verdicts(true);
  }

  /** Every caution in every row, firing or not, without those that stand for every job. */
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
      table.rules().forEach(rule -> add(rule, required, rows(table).count(), verdicts));
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

  /** The values that are at fault themselves, without those that wait for them. */
  public List<FilledValue> faults() {
    List<FilledValue> faults = new ArrayList<>();
    checked.places().forEach(place -> addFaults(place.place(), faults));
    return faults;
  }

  private void addFaults(Place place, List<FilledValue> faults) {
    results
        .spots(place)
        .filter(spot -> results.value(spot) instanceof Value.Fault)
        .forEach(spot -> faults.add(value(spot)));
  }

  /** What was worth telling when the workbook was read. */
  public List<Diagnostic> diagnostics() {
    return reading.diagnostics();
  }

  /**
   * This workbook with another formula for a line or a column, in the file that decides it.
   *
   * @param formula as it would be written after the {@code =}
   */
  public Edit withFormula(Place place, String formula) {
    return edit(new FormulaEdit(place, formula));
  }

  /**
   * This workbook with another entry in one cell, in the file that has the row.
   *
   * @param row counted from 0
   * @param entry as it would be written in the row; blank to leave the cell to its column
   */
  public Edit withCell(Column column, int row, String entry) {
    return edit(new CellEdit(column, row, entry));
  }

  /**
   * This workbook with an edit. An edit of one formula or cell that changes no kind works out again
   * only what it feeds, rows and plans among it; else the changed texts are read again, which gives
   * the same. Nothing is written to disk.
   *
   * <pre>{@code
   * Table pieces = filled.book().table("pieces");
   * Edit edit = filled.edit(new RowRemoval(pieces, 2));
   * if (edit.filled() == null) {
   *   edit.diagnostics().forEach(why -> System.out.println(why.message()));
   * }
   * }</pre>
   *
   * @param edit of places and rows of this workbook
   */
  public Edit edit(WorkbookEdit edit) {
    return edit(edit, UnaryOperator.identity());
  }

  /**
   * This workbook with an edit that makes no plan. A plan whose job it changes, and which is not
   * known from before, is left {@link #pending}: what goes over its rows or names them waits for
   * it. {@link #planned} makes it.
   *
   * @param edit of places and rows of this workbook
   */
  public Edit editLeavingPlans(WorkbookEdit edit) {
    return edit(edit, RowPlanner::leavingUnknown);
  }

  private Edit edit(WorkbookEdit edit, UnaryOperator<RowPlanner> plans) {
    Diagnostics typed = new Diagnostics();
    edit.checkTyped(typed);
    return typed.hasFaults()
        ? Edit.refused(typed.inOrder())
        : new SmallEdit(this, edit, plans.apply(reading.planning()))
            .made()
            .orElseGet(() -> new TextEdit(this, edit, plans).made());
  }

  /** The plans that are still to be made, by name, in the order in which they come. */
  public List<String> pending() {
    return results.pending().stream().map(plan -> plan.name().text()).toList();
  }

  /**
   * Refuses a workbook with plans that are still to be made, for whoever passes its values on.
   *
   * @throws PlansPending where there are some
   */
  public void requirePlans() {
    if (!pending().isEmpty()) {
      throw new PlansPending(pending());
    }
  }

  /**
   * This workbook with its {@link #pending} plans made, as if they had been made at once. It is
   * refused where a plan brings what the workbook cannot hold, such as too many rows.
   */
  public Edit planned() {
    return Refill.planned(results, reading.planning())
        .flatMap(refilled -> Edit.of(refilled, reading, edits))
        .orElseGet(() -> TextEdit.read(this));
  }

  /** Its files, with every edit that is not yet among their texts. */
  public BookRevision revision() {
    return revision(edits);
  }

  BookRevision revision(List<WorkbookEdit> edits) {
    BookRevision revision = new BookRevision(book(), reading.files(), results);
    for (WorkbookEdit edit : edits) {
      try {
        edit.writeInto(revision);
      } catch (EditRefused impossible) {
        throw new IllegalStateException("this edit was made before", impossible);
      }
    }
    return revision;
  }

  /**
   * Reads this workbook with other texts in some of its files. Files that do not change are not
   * parsed again.
   *
   * @param texts by the name of the file
   */
  public Workbook reread(Map<String, String> texts) {
    return Workbook.revised(reading, texts, UnaryOperator.identity());
  }

  /** The new text of each file that an edit changed, by the text as it was loaded. */
  public Map<SourceText, String> revisions() {
    FollowedFiles files = reading.files();
    try {
      return edits.isEmpty()
          ? files.revisions()
          : files.revised(revision().texts(), new Diagnostics()).revisions();
    } catch (EditRefused impossible) {
      throw new IllegalStateException("these edits were made before", impossible);
    }
  }

  Reading reading() {
    return reading;
  }

  List<WorkbookEdit> edits() {
    return edits;
  }
}
