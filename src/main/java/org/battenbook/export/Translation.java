package org.battenbook.export;

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
 * A formula as a spreadsheet's, in base units. Every operation brings its own text; here it is
 * found which cells the names read.
 *
 * <p>What cannot be said is an {@link Inexpressible}.
 */
final class Translation
    implements ExpressionVisitor<SpreadsheetText>, TargetVisitor<SpreadsheetText> {
  private final PlaceReads reads;
  private final CheckedFormula formula;
  private final Standing standing;

  Translation(PlaceReads reads, CheckedFormula formula, Standing standing) {
    this.reads = reads;
    this.formula = formula;
    this.standing = standing;
  }

  PlaceReads reads() {
    return reads;
  }

  CheckedFormula formula() {
    return formula;
  }

  Standing standing() {
    return standing;
  }

  /** The same formula, standing elsewhere. */
  Translation at(Standing elsewhere) {
    return new Translation(reads, formula, elsewhere);
  }

  /** A node's text. */
  SpreadsheetText translate(Expression node) {
    boolean ofEachRow = standing.array() && !isPlain(node) && !OuterReads.in(node, formula);
    SpreadsheetText text = ofEachRow ? helper(node) : node.accept(this);
    return FormulaLimits.checked(text);
  }

  /** What an array reads as it stands: literals, lines and the table's own columns. */
  private boolean isPlain(Expression node) {
    return node.children().isEmpty()
        && !(node instanceof Reference reference && !formula.path(reference).through().isEmpty());
  }

  /** A part that belongs to the table's own row stands in a column of its own. */
  private SpreadsheetText helper(Expression node) {
    TablePlan table = table();
    HelperColumn helper = helperColumn(node, table);
    Kind kind = formula.kind(node);
    String range = table.range(helper, standing.sheet());
    SpreadsheetText cells = SpreadsheetText.column(range, PlaceReads.content(kind));
    return kind instanceof Kind.RowOf rowOf
        ? reads.row(reads.rowsOf(rowOf), cells, standing.sheet())
        : cells;
  }

  /** The column that holds a part's value for each row of a table; rows as their numbers. */
  HelperColumn helperColumn(Expression node, TablePlan table) {
    at(Standing.inRow(table, 0)).translate(node);
    return table.helper(
        List.of(formula, node),
        node.span().text(),
        false,
        row -> at(Standing.inRow(table, row)).translate(node),
        row -> CellContents.ofHelper(Trace.innerValue(reads.results(), formula, node, row, row)));
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
    return value.accept(new ConstantTranslation(reads, standing.sheet()));
  }

  @Override
  public SpreadsheetText reference(Reference reference) {
    Path path = formula.path(reference);
    SpreadsheetText read = path.target().accept(this);
    for (Place place : path.through()) {
      read = reads.lookedUp(place, read, standing.sheet());
    }
    return read;
  }

  @Override
  public SpreadsheetText here(Target.Here here) {
    Place place = here.place();
    if (place.table() == null) {
      return reads.single(place, standing.sheet());
    }
    return standing.array()
        ? reads.column(place, standing.sheet())
        : reads.cell(place, standing.row(), standing.sheet());
  }

  @Override
  public SpreadsheetText above(Target.Above above) {
    return reads.cell(above.column(), standing.row() - 1, standing.sheet());
  }

  @Override
  public SpreadsheetText outer(Target.Outer outer) {
    return reads.cell(outer.column(), outer().row(), standing.sheet());
  }

  @Override
  public SpreadsheetText parameter(Target.Parameter parameter) {
    return standing.arguments().get(parameter.index());
  }

  @Override
  public SpreadsheetText setting(Target.Setting setting) {
    return constant(setting.value());
  }

  @Override
  public SpreadsheetText outerRow(Target.OuterRow outerRow) {
    Table table = outerRow.table();
    TablePlan outer = reads.plan().table(table);
    String corner = outer.corner().fixedFrom(standing.sheet());
    SpreadsheetText heading =
        SpreadsheetText.call("ROW", SpreadsheetText.reference(corner, Content.NUMBER));
    return SpreadsheetText.row(
        SpreadsheetText.call("ROW").minus(heading),
        reads.cell(table.keyColumn(), outer().row(), standing.sheet()));
  }

  /** The formula that a change replaced is written out in its place. */
  @Override
  public SpreadsheetText inherited(Target.Inherited inherited) {
    var checked = reads.book().place(inherited.place());
    var own = formula.scope().own();
    boolean ofCell = own != null && own.layer() == checked.layers().size();
    Value written =
        ofCell
            ? reads.results().decisions().written(new Spot(inherited.place(), standing.row()))
            : null;
    if (written != null) {
      return constant(written);
    }
    CheckedFormula replaced = checked.layers().get(inherited.layer()).formula();
    if (replaced == null) {
      throw new Inexpressible("what it changes was never filled in");
    }
    return new Translation(reads, replaced, standing).translate(replaced.expression());
  }

  @Override
  public SpreadsheetText firstRow(FirstRow firstRow) {
    TablePlan table = table();
    String first = table.cell(table.table().keyColumn(), 0).fixedFrom(standing.sheet());
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
    return new Translation(reads, function.body(), standing.calling(arguments))
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
      SpreadsheetText off = new Translation(reads, margin, standing).translate(margin.expression());
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

  /** A spreadsheet would go over the rows that are there, as if they were all. */
  private void refuseMissingRows(Table table) {
    if (reads.results().missingRows(table) != null) {
      throw new Inexpressible("not all rows of '%s' are known yet".formatted(table));
    }
  }

  TablePlan table() {
    if (standing.table() == null) {
      throw new IllegalStateException("no row here");
    }
    return standing.table();
  }

  private Standing outer() {
    if (standing.outer() == null) {
      throw new IllegalStateException("no row around here");
    }
    return standing.outer();
  }
}
