package org.battenbook.export;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.battenbook.bind.Spot;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.check.CheckedBook;
import org.battenbook.check.CheckedFormula;
import org.battenbook.check.CheckedPlace;
import org.battenbook.check.Decisions;
import org.battenbook.evaluate.Results;
import org.battenbook.evaluate.Trace;
import org.battenbook.export.file.Address;
import org.battenbook.export.file.CellContent;
import org.battenbook.export.file.CellContents;
import org.battenbook.export.file.Look;
import org.battenbook.export.file.NumberFormats;
import org.battenbook.export.file.SheetCell;
import org.battenbook.export.formula.FormulaContext;
import org.battenbook.export.formula.FormulaTranslator;
import org.battenbook.export.formula.HelperColumn;
import org.battenbook.export.formula.Inexpressible;
import org.battenbook.export.formula.WrittenUnit;
import org.battenbook.export.layout.TableLayout;
import org.battenbook.operation.Operation;
import org.battenbook.operation.SpreadsheetText;
import org.battenbook.unit.Form;
import org.battenbook.value.Kind;
import org.battenbook.value.ShownValue;
import org.battenbook.value.Value;

/**
 * The cell of a value. It holds what a person entered, a live formula, or a value and the reason
 * why it has no formula.
 */
final class PlaceCells {
  /** Errors that a spreadsheet finds, too, however its doubles are rounded. */
  private static final Set<String> FOUND_TOO =
      Set.of(
          "no-row-fits",
          "largest-of-nothing",
          "smallest-of-nothing",
          "average-of-nothing",
          "negative-root",
          "not-a-count");

  private final FormulaTranslator translator;
  private final CheckedBook book;
  private final Results results;
  private final Decisions decided;
  private final Map<Spot, String> fixed = new LinkedHashMap<>();

  PlaceCells(FormulaTranslator translator) {
    this.translator = translator;
    this.results = translator.results();
    this.book = results.program().book();
    this.decided = results.decisions();
  }

  /**
   * The cell of a spot.
   *
   * @param context the context of its formula
   */
  SheetCell cell(Spot spot, Address at, FormulaContext context) {
    CheckedPlace checked = book.place(spot.place());
    CheckedFormula own = decided.ownFormula(spot);
    boolean written = own == null && decided.written(spot) != null;
    CheckedFormula formula = own == null ? checked.formula() : own;
    boolean isCounted = formula != null && formula.countsPixels() && spot.place().isGiven();
    if (written || isCounted || (formula != null && formula.literal().isPresent())) {
      return constant(spot, at, written);
    }
    if (decided.staysEmpty(spot)) {
      return cell(spot, at, readable(new CellContent.Words("")), Look.WORKED_OUT, "");
    }
    if (formula == null) {
      return cell(spot, at, new CellContent.Missing(), Look.GIVEN, "enter a value");
    }
    return formula(spot, at, formula, context);
  }

  /** The unit that a place is shown in, or an empty text. */
  String unit(Place place) {
    Form form = book.place(place).form();
    return form == null ? "" : form.unit().symbol();
  }

  /** The helper columns beside a table so far. */
  List<HelperColumn> helpers(TableLayout table) {
    return translator.helpers(table).all();
  }

  Kind kind(Place place) {
    return book.place(place).kind();
  }

  private SheetCell constant(Spot spot, Address at, boolean written) {
    CheckedPlace checked = book.place(spot.place());
    Value value = results.value(spot);
    CellContent content = CellContents.of(value, checked.form());
    Optional<SpreadsheetText> asWritten =
        WrittenUnit.of(decided.show(spot, value).text(), value, checked.form());
    CellContent shown =
        asWritten.isPresent()
            ? new CellContent.Formula(asWritten.get().toString(), false, content)
            : readable(content);
    if (written && !spot.place().isGiven()) {
      return cell(spot, at, shown, Look.OVERRIDDEN, overriding(spot, checked));
    }
    boolean opened = spot.place().comesWithRow();
    return cell(spot, at, shown, opened ? Look.WORKED_OUT : Look.GIVEN, "");
  }

  /** An empty text is written as a formula. A formula that reads an empty cell would read 0. */
  private static CellContent readable(CellContent content) {
    boolean empty = content instanceof CellContent.Words words && words.text().isEmpty();
    return empty ? new CellContent.Formula("\"\"", false, content) : content;
  }

  private String overriding(Spot spot, CheckedPlace checked) {
    Value instead = Trace.withoutCell(results, spot);
    return instead == null
        ? "entered"
        : "entered; the formula gives " + ShownValue.of(instead, checked.form()).text();
  }

  private SheetCell formula(Spot spot, Address at, CheckedFormula formula, FormulaContext context) {
    Value value = results.value(spot);
    CellContent content = CellContents.of(value, book.place(spot.place()).form());
    try {
      if (value instanceof Value.Fault fault && !FOUND_TOO.contains(fault.code())) {
        throw new Inexpressible(fault.message());
      }
      if (!Trace.every(results, spot, Operation::agreesInSpreadsheet)) {
        throw Inexpressible.tooNear();
      }
      String shown = translator.inCell(spot.place(), formula, context).toString();
      return cell(
          spot, at, new CellContent.Formula(shown, false, content), Look.WORKED_OUT, fault(value));
    } catch (Inexpressible reason) {
      fixed.put(spot, reason.reason());
      return cell(spot, at, content, Look.FIXED, reason.words());
    }
  }

  private static String fault(Value value) {
    return value instanceof Value.Fault fault ? fault.message() : "";
  }

  private SheetCell cell(Spot spot, Address at, CellContent content, Look look, String comment) {
    String format = format(book.place(spot.place()), results.value(spot), content);
    return new SheetCell(
        at.row(), at.column(), content, look, format, comment, link(spot, content));
  }

  /**
   * A link to the derivation. A text has none, because programs change the look of linked texts.
   */
  private String link(Spot spot, CellContent content) {
    Address told = translator.layout().derivations().of(spot);
    return told == null || content instanceof CellContent.Words ? "" : told.seenFrom("");
  }

  /** The name of the row of a value. A line has no row: the name is empty. */
  String rowName(Spot spot) {
    Table table = spot.place().table();
    return table == null ? "" : results.rows(table).name(spot.row());
  }

  /** A cell that shows a value by reading the cell of that value. */
  SheetCell readFrom(Spot spot, Address own, Address at) {
    CheckedPlace checked = book.place(spot.place());
    Value value = results.value(spot);
    CellContent content =
        decided.staysEmpty(spot)
            ? new CellContent.Words("")
            : CellContents.of(value, checked.form());
    CellContent read = new CellContent.Formula(own.seenFrom(at.sheet()), false, content);
    return new SheetCell(
        at.row(), at.column(), read, Look.WORKED_OUT, format(checked, value, content), "");
  }

  /** The calculated values that have no formula so far, each with the reason. */
  Map<Spot, String> fixed() {
    return fixed;
  }

  Results results() {
    return results;
  }

  private static String format(CheckedPlace checked, Value value, CellContent content) {
    Form form = checked.form();
    if (form != null) {
      return value instanceof Value.Amount amount
          ? NumberFormats.of(form, amount.quantity().in(form.unit()))
          : NumberFormats.of(form);
    }
    if (checked.kind() == Kind.DATE) {
      return NumberFormats.DATE;
    }
    if (checked.kind() == Kind.YES_NO) {
      return NumberFormats.YES_NO;
    }
    return content instanceof CellContent.Words ? NumberFormats.TEXT : NumberFormats.GENERAL;
  }
}
