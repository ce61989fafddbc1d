package org.battenbook.export.formula;

import java.util.List;
import org.battenbook.bind.Spot;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.check.CheckedFormula;
import org.battenbook.check.CheckedFunction;
import org.battenbook.check.Path;
import org.battenbook.check.Target;
import org.battenbook.check.TargetVisitor;
import org.battenbook.evaluate.Trace;
import org.battenbook.export.file.CellContents;
import org.battenbook.export.layout.TableLayout;
import org.battenbook.operation.Operation;
import org.battenbook.operation.SpreadsheetText;
import org.battenbook.operation.SpreadsheetText.Content;
import org.battenbook.syntax.Aggregate;
import org.battenbook.syntax.Apply;
import org.battenbook.syntax.AtWorst;
import org.battenbook.syntax.Call;
import org.battenbook.syntax.Choice;
import org.battenbook.syntax.DateLiteral;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.ExpressionVisitor;
import org.battenbook.syntax.FirstRow;
import org.battenbook.syntax.QuantityLiteral;
import org.battenbook.syntax.Reference;
import org.battenbook.syntax.Selection;
import org.battenbook.syntax.TextLiteral;
import org.battenbook.syntax.TruthLiteral;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;

/**
 * Translates one formula to a spreadsheet formula in base units. Each operation gives its own text.
 * This class finds the cells that names read.
 *
 * <p>It throws {@link Inexpressible} if no spreadsheet formula gives the value.
 */
final class Translation
    implements ExpressionVisitor<SpreadsheetText>, TargetVisitor<SpreadsheetText> {
  private final PlaceReads reads;
  private final CheckedFormula formula;
  private final FormulaContext context;

  Translation(PlaceReads reads, CheckedFormula formula, FormulaContext context) {
    this.reads = reads;
    this.formula = formula;
    this.context = context;
  }

  PlaceReads reads() {
    return reads;
  }

  CheckedFormula formula() {
    return formula;
  }

  FormulaContext context() {
    return context;
  }

  /** The same formula in another context. */
  Translation at(FormulaContext elsewhere) {
    return new Translation(reads, formula, elsewhere);
  }

  /** The text of a node. */
  SpreadsheetText translate(Expression node) {
    boolean ofEachRow = context.array() && !isPlain(node) && !OuterReads.in(node, formula);
    SpreadsheetText text = ofEachRow ? helper(node) : node.accept(this);
    return FormulaLimits.checked(text);
  }

  /** Whether an array formula can read a node directly: a literal, a line or an own column. */
  private boolean isPlain(Expression node) {
    return node.children().isEmpty()
        && !(node instanceof Reference reference && !formula.path(reference).through().isEmpty());
  }

  /** A part that reads only the row itself gets a helper column. */
  private SpreadsheetText helper(Expression node) {
    TableLayout table = table();
    HelperColumn helper = helperColumn(node, table);
    Kind kind = formula.kind(node);
    String range = helper.range(context.sheet());
    SpreadsheetText cells = SpreadsheetText.column(range, PlaceReads.content(kind));
    return kind instanceof Kind.RowOf rowOf
        ? reads.row(reads.rowsOf(rowOf), cells, context.sheet())
        : cells;
  }

  /** The column with the value of a part for each row of a table. Rows are their numbers. */
  HelperColumn helperColumn(Expression node, TableLayout table) {
    at(FormulaContext.inRow(table, 0)).translate(node);
    return reads
        .helpers(table)
        .column(
            List.of(formula, node),
            node.span().text(),
            false,
            row -> at(FormulaContext.inRow(table, row)).translate(node),
            row ->
                CellContents.ofHelper(Trace.innerValue(reads.results(), formula, node, row, row)));
  }

  @Override
  public SpreadsheetText quantity(QuantityLiteral literal) {
    return constant(formula.constant(literal));
  }

  @Override
  public SpreadsheetText text(TextLiteral literal) {
    return literal.children().isEmpty()
        ? constant(formula.constant(literal))
        : new TextTranslation(this).of(literal);
  }

  @Override
  public SpreadsheetText date(DateLiteral literal) {
    return constant(formula.constant(literal));
  }

  @Override
  public SpreadsheetText truth(TruthLiteral literal) {
    return constant(formula.constant(literal));
  }

  private SpreadsheetText constant(Value value) {
    return value.accept(new ConstantTranslation(reads, context.sheet()));
  }

  @Override
  public SpreadsheetText reference(Reference reference) {
    Path path = formula.path(reference);
    SpreadsheetText read = path.target().accept(this);
    for (Place place : path.through()) {
      read = reads.lookedUp(place, read, context.sheet());
    }
    return read;
  }

  @Override
  public SpreadsheetText here(Target.Here here) {
    Place place = here.place();
    if (place.table() == null) {
      return reads.single(place, context.sheet());
    }
    return context.array()
        ? reads.column(place, context.sheet())
        : reads.cell(place, context.row(), context.sheet());
  }

  @Override
  public SpreadsheetText above(Target.Above above) {
    return reads.cell(above.column(), context.row() - 1, context.sheet());
  }

  @Override
  public SpreadsheetText outer(Target.Outer outer) {
    return reads.cell(outer.column(), outer().row(), context.sheet());
  }

  @Override
  public SpreadsheetText parameter(Target.Parameter parameter) {
    return context.arguments().get(parameter.index());
  }

  @Override
  public SpreadsheetText setting(Target.Setting setting) {
    return constant(setting.value());
  }

  @Override
  public SpreadsheetText outerRow(Target.OuterRow outerRow) {
    Table table = outerRow.table();
    TableLayout outer = reads.layout().table(table);
    String corner = outer.corner().fixedFrom(context.sheet());
    SpreadsheetText heading =
        SpreadsheetText.call("ROW", SpreadsheetText.reference(corner, Content.NUMBER));
    return SpreadsheetText.row(
        SpreadsheetText.call("ROW").minus(heading),
        reads.cell(table.keyColumn(), outer().row(), context.sheet()));
  }

  /** A reference to the formula that a change replaced becomes that formula. */
  @Override
  public SpreadsheetText inherited(Target.Inherited inherited) {
    var checked = reads.book().place(inherited.place());
    var own = formula.scope().own();
    boolean ofCell = own != null && own.layer() == checked.layers().size();
    Value written =
        ofCell
            ? reads.results().decisions().written(new Spot(inherited.place(), context.row()))
            : null;
    if (written != null) {
      return constant(written);
    }
    CheckedFormula replaced = checked.layers().get(inherited.layer()).formula();
    if (replaced == null) {
      throw new Inexpressible("what it changes was never filled in");
    }
    return new Translation(reads, replaced, context).translate(replaced.expression());
  }

  @Override
  public SpreadsheetText firstRow(FirstRow firstRow) {
    TableLayout table = table();
    String first = table.cell(table.table().keyColumn(), 0).fixedFrom(context.sheet());
    SpreadsheetText of =
        SpreadsheetText.call("ROW", SpreadsheetText.reference(first, Content.NUMBER));
    return SpreadsheetText.call("ROW").compared("=", of);
  }

  @Override
  public SpreadsheetText apply(Apply apply) {
    return formula
        .operation(apply)
        .spreadsheet(apply.children().stream().map(this::translate).toList());
  }

  @Override
  public SpreadsheetText call(Call call) {
    List<SpreadsheetText> arguments = call.arguments().stream().map(this::translate).toList();
    CheckedFunction function = formula.function(call);
    if (formula.isPixelCount(call)) {
      throw new Inexpressible("a spreadsheet does not look into image files");
    }
    if (function == null) {
      return formula.operation(call).spreadsheet(arguments);
    }
    return new Translation(reads, function.body(), context.calling(arguments))
        .translate(function.body().expression());
  }

  @Override
  public SpreadsheetText choice(Choice choice) {
    return SpreadsheetText.choice(
        translate(choice.condition()), translate(choice.then()), translate(choice.otherwise()));
  }

  @Override
  public SpreadsheetText atWorst(AtWorst atWorst) {
    Apply comparison = atWorst.comparison();
    Operation compared = formula.operation(comparison);
    SpreadsheetText left = translate(comparison.children().get(0));
    SpreadsheetText right = translate(comparison.children().get(1));
    CheckedFormula margin = reads.results().program().tolerances().margin(atWorst);
    if (margin != null) {
      SpreadsheetText off = new Translation(reads, margin, context).translate(margin.expression());
      left = compared.worsening().orElseThrow().spreadsheet(List.of(left, off));
    }
    return compared.spreadsheet(List.of(left, right));
  }

  @Override
  public SpreadsheetText aggregate(Aggregate aggregate) {
    refuseMissingRows(formula.table(aggregate));
    return new AggregateTranslation(this, aggregate).translate();
  }

  @Override
  public SpreadsheetText selection(Selection selection) {
    refuseMissingRows(formula.table(selection));
    return new SelectionTranslation(this, selection).translate();
  }

  /** A spreadsheet would read the rows that are there as if they were all. */
  private void refuseMissingRows(Table table) {
    if (reads.results().missingRows(table) != null) {
      throw new Inexpressible("not all rows of '%s' are known yet".formatted(table));
    }
  }

  TableLayout table() {
    if (context.table() == null) {
      throw new IllegalStateException("no row here");
    }
    return context.table();
  }

  private FormulaContext outer() {
    if (context.outer() == null) {
      throw new IllegalStateException("no row around here");
    }
    return context.outer();
  }
}
