package org.battenbook.parse;

import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.tree.TerminalNode;
import org.battenbook.parse.generated.WorkbookBaseVisitor;
import org.battenbook.parse.generated.WorkbookParser;
import org.battenbook.parse.generated.WorkbookParser.CautionContext;
import org.battenbook.parse.generated.WorkbookParser.ChangeContext;
import org.battenbook.parse.generated.WorkbookParser.CurrencyContext;
import org.battenbook.parse.generated.WorkbookParser.EditionContext;
import org.battenbook.parse.generated.WorkbookParser.FollowsContext;
import org.battenbook.parse.generated.WorkbookParser.FormulaContext;
import org.battenbook.parse.generated.WorkbookParser.FunctionContext;
import org.battenbook.parse.generated.WorkbookParser.GivenContext;
import org.battenbook.parse.generated.WorkbookParser.KindContext;
import org.battenbook.parse.generated.WorkbookParser.LengthsContext;
import org.battenbook.parse.generated.WorkbookParser.LineContext;
import org.battenbook.parse.generated.WorkbookParser.LinesContext;
import org.battenbook.parse.generated.WorkbookParser.ListedRowsContext;
import org.battenbook.parse.generated.WorkbookParser.NameContext;
import org.battenbook.parse.generated.WorkbookParser.OpeningContext;
import org.battenbook.parse.generated.WorkbookParser.PageContext;
import org.battenbook.parse.generated.WorkbookParser.PageOrderContext;
import org.battenbook.parse.generated.WorkbookParser.ParameterContext;
import org.battenbook.parse.generated.WorkbookParser.PlanContext;
import org.battenbook.parse.generated.WorkbookParser.PlanSourceContext;
import org.battenbook.parse.generated.WorkbookParser.RequireContext;
import org.battenbook.parse.generated.WorkbookParser.RowsContext;
import org.battenbook.parse.generated.WorkbookParser.ShownFirstContext;
import org.battenbook.parse.generated.WorkbookParser.StatementContext;
import org.battenbook.parse.generated.WorkbookParser.TableContext;
import org.battenbook.parse.generated.WorkbookParser.TitleContext;
import org.battenbook.parse.generated.WorkbookParser.WorkedOutContext;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.Caution;
import org.battenbook.syntax.Change;
import org.battenbook.syntax.Follows;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.FunctionDefinition;
import org.battenbook.syntax.KindExpression;
import org.battenbook.syntax.LineDefinition;
import org.battenbook.syntax.ListedRows;
import org.battenbook.syntax.Name;
import org.battenbook.syntax.Opening;
import org.battenbook.syntax.PageItem;
import org.battenbook.syntax.PageSection;
import org.battenbook.syntax.PlanSection;
import org.battenbook.syntax.Quoted;
import org.battenbook.syntax.Requirement;
import org.battenbook.syntax.RowsSection;
import org.battenbook.syntax.ShownAs;
import org.battenbook.syntax.WorkbookFile;
import org.jspecify.annotations.Nullable;

/**
 * Builds the file out of its statements, one after another. Pages and tables are open from their
 * head to the next: indentation means nothing.
 */
final class WorkbookBuilder extends WorkbookBaseVisitor<@Nullable Void> {
  private final SourceText source;
  private final Diagnostics diagnostics;
  private final List<Follows> follows = new ArrayList<>();
  private final List<Change> changes = new ArrayList<>();
  private final List<FunctionDefinition> functions = new ArrayList<>();
  private final List<PageSection> pages = new ArrayList<>();
  private final Indentation indentation;
  private @Nullable Quoted title;
  private @Nullable Quoted edition;
  private @Nullable Name currency;
  private @Nullable ShownAs lengths;
  private final List<Name> pageOrder = new ArrayList<>();
  private @Nullable PageDraft page;
  private @Nullable TableDraft table;
  private @Nullable PlanDraft plan;
  private @Nullable RowsReader rows;

  /** The statement being read. */
  private LineTokens line;

  private LineFaults faults;

  private int statements;
  private int statementText;

  WorkbookBuilder(SourceText source, Diagnostics diagnostics) {
    this.source = source;
    this.diagnostics = diagnostics;
    this.indentation = new Indentation(source, diagnostics);
    this.line = new LineTokens(source, List.of(), "");
    this.faults = new LineFaults(diagnostics);
  }

  /** The reader that takes the next lines if they are rows; absent outside of rows. */
  @Nullable RowsReader openRows() {
    return rows;
  }

  /** Reads the next statement. */
  void statement(Span where, LineFaults faults) {
    closeRows();
    statements++;
    statementText += where.length();
    this.faults = faults;
    this.line = TokenReader.statement(where, faults);
    StatementContext tree = faults.any() ? null : GrammarRun.statement(line, faults);
    if (tree == null) {
      keepWhatCanBe();
    } else {
      tree.head().accept(this);
    }
  }

  /** How many statements were read so far. */
  int statements() {
    return statements;
  }

  /** How many characters they have. */
  int statementText() {
    return statementText;
  }

  /** The file as read so far, all that is open closed. */
  WorkbookFile file() {
    closePage();
    return new WorkbookFile(
        source,
        title,
        edition,
        follows,
        currency,
        lengths,
        pageOrder,
        changes,
        functions,
        pages,
        statements,
        statementText);
  }

  private void closeRows() {
    if (rows != null) {
      RowsSection section = rows.section(new LineFaults(diagnostics));
      rows = null;
      if (section != null) {
        addToPage(section);
      }
    }
  }

  /** Closes the table or the plan that is open. */
  private void closeTable() {
    closeRows();
    if (plan != null) {
      PlanSection closed = plan.section(new LineFaults(diagnostics));
      plan = null;
      if (closed != null) {
        addToPage(closed);
      }
    }
    if (table != null) {
      TableDraft closed = table;
      table = null;
      addToPage(closed.section());
    }
  }

  private void closePage() {
    closeTable();
    if (page != null) {
      pages.add(page.section());
      page = null;
    }
  }

  private void addToPage(PageItem item) {
    pageAt(item.span()).add(item);
  }

  /** The open page; without one, an unnamed page and a fault. */
  private PageDraft pageAt(Span item) {
    if (page == null) {
      faults.fault(
          "no-page",
          item,
          "this line is on no page",
          "write a line above it that begins a page, such as page pieces");
      page = new PageDraft(new Name("page", item), null, "", item);
    }
    return page;
  }

  /** A statement that does not parse still opens its page, table or rows, and keeps its name. */
  private void keepWhatCanBe() {
    switch (line.type(0)) {
      case WorkbookParser.PAGE -> openPage(wordsAfterHead(), null);
      case WorkbookParser.TABLE -> openTable(wordsAfterHead(), null);
      case WorkbookParser.ROWS_OF -> {
        closeTable();
        rows = line.find(WorkbookParser.FROM) < 0 ? new RowsReader(null, line.whole()) : null;
      }
      case WorkbookParser.WORD -> keepLine();
      case WorkbookParser.TO_FIND -> keepFunction();
      default -> {}
    }
  }

  private Name wordsAfterHead() {
    Name name = nameFrom(1);
    return name == null ? new Name("unnamed", line.whole()) : name;
  }

  private void keepLine() {
    Name name = nameFrom(0);
    int after = name == null ? 0 : wordsFrom(0);
    boolean isLine =
        line.type(after) == WorkbookParser.EQUALS || line.type(after) == WorkbookParser.COLON;
    if (name != null && isLine) {
      add(new LineDefinition(name, null, null, line.note(), line.whole()));
    }
  }

  private void keepFunction() {
    Name name = nameFrom(1);
    if (name == null) {
      return;
    }
    List<FunctionDefinition.Parameter> parameters = new ArrayList<>();
    for (int i = 1 + wordsFrom(1); i < line.count() && line.type(i) != WorkbookParser.CLOSE; i++) {
      Name parameter = nameFrom(i);
      boolean opens = !line.isWord(i - 1) && line.type(i - 1) != WorkbookParser.COLON;
      if (parameter != null && opens) {
        parameters.add(new FunctionDefinition.Parameter(parameter, null));
      }
    }
    functions.add(new FunctionDefinition(name, parameters, null, line.note(), line.whole()));
  }

  private int wordsFrom(int index) {
    int words = 0;
    while (line.isWord(index + words)) {
      words++;
    }
    return words;
  }

  private @Nullable Name nameFrom(int index) {
    int words = wordsFrom(index);
    if (words == 0) {
      return null;
    }
    Span span = line.span(index, index + words - 1);
    return new Name(Spaces.single(span.text()), span);
  }

  @Override
  public @Nullable Void visitTitle(TitleContext tree) {
    if (isSetting(title != null)) {
      title = quoted(tree.TEXT());
      edition = edition(tree.edition());
    }
    return null;
  }

  @Override
  public @Nullable Void visitFollows(FollowsContext tree) {
    if (isSetting(false)) {
      follows.add(new Follows(quoted(tree.TEXT()), edition(tree.edition())));
    }
    return null;
  }

  private @Nullable Quoted edition(@Nullable EditionContext tree) {
    return tree == null ? null : quoted(tree.TEXT());
  }

  @Override
  public @Nullable Void visitCurrency(CurrencyContext tree) {
    if (isSetting(currency != null)) {
      currency = name(tree.name());
    }
    return null;
  }

  @Override
  public @Nullable Void visitLengths(LengthsContext tree) {
    if (isSetting(lengths != null)) {
      lengths = formulas().form(tree.form());
    }
    return null;
  }

  @Override
  public @Nullable Void visitPageOrder(PageOrderContext tree) {
    if (isSetting(!pageOrder.isEmpty())) {
      tree.name().stream().map(this::name).forEach(pageOrder::add);
    }
    return null;
  }

  /** Whether the line may set what it sets: once, and at the top. */
  private boolean isSetting(boolean isSet) {
    String head = line.get(0).getText();
    if (isSet) {
      faults.fault(
          "setting-twice",
          line.whole(),
          "'%s' is used twice".formatted(head),
          "keep one of the two lines");
    } else if (page != null) {
      faults.fault(
          "setting-not-at-top",
          line.whole(),
          "'%s' is below a page".formatted(head),
          "move this line to the top of the file, above the first page");
    }
    return !faults.any();
  }

  @Override
  public @Nullable Void visitPage(PageContext tree) {
    openPage(name(tree.name()), tree.TEXT() == null ? null : quoted(tree.TEXT()));
    return null;
  }

  private void openPage(Name name, @Nullable Quoted pageTitle) {
    closePage();
    indentation.page(line.whole());
    page = new PageDraft(name, pageTitle, line.note(), line.whole());
  }

  @Override
  public @Nullable Void visitTable(TableContext tree) {
    Name key = tree.BY() == null ? null : name(tree.name(1));
    openTable(name(tree.name(0)), key);
    return null;
  }

  private void openTable(Name name, @Nullable Name key) {
    closeTable();
    pageAt(line.whole());
    indentation.table(line.whole(), name);
    table = new TableDraft(name, key, line.note(), line.whole());
  }

  @Override
  public @Nullable Void visitOpening(OpeningContext tree) {
    TableDraft open = openTable();
    if (open != null) {
      indentation.part(line.whole());
      List<Name> names = tree.name().stream().map(this::name).toList();
      Opening.Count count =
          names.size() == 2 ? null : new Opening.Count(names.get(2), names.get(3));
      open.add(new Opening(names.get(0), names.get(1), count, List.of(), span(tree)), faults);
    }
    return null;
  }

  @Override
  public @Nullable Void visitPlan(PlanContext tree) {
    closeTable();
    pageAt(line.whole());
    indentation.lines(line.whole());
    PlanSection.Cutting cutting =
        tree.STICK_PLAN() == null ? PlanSection.Cutting.SHEETS : PlanSection.Cutting.STICKS;
    plan = new PlanDraft(cutting, name(tree.name()), line.note(), line.whole());
    return null;
  }

  @Override
  public @Nullable Void visitPlanSource(PlanSourceContext tree) {
    if (plan == null) {
      String head = line.get(0).getText();
      faults.fault(
          "not-in-a-plan",
          line.whole(),
          "'%s' is not in a plan".formatted(head),
          "write 'stick plan' or 'sheet plan' and a name above it");
      return null;
    }
    plan.open(part(tree), name(tree.name()), line.whole(), faults);
    return null;
  }

  private static PlanDraft.Part part(PlanSourceContext tree) {
    return tree.PARTS_OF() != null
        ? PlanDraft.Part.PARTS
        : tree.STOCK_OF() != null
            ? PlanDraft.Part.STOCK
            : tree.KEEP_IN() != null ? PlanDraft.Part.KEEP : PlanDraft.Part.RECORD;
  }

  @Override
  public @Nullable Void visitGiven(GivenContext tree) {
    TableDraft open = openTable();
    if (open != null) {
      indentation.part(line.whole());
      open.openGiven(line.whole());
    }
    return null;
  }

  @Override
  public @Nullable Void visitWorkedOut(WorkedOutContext tree) {
    TableDraft open = openTable();
    if (open != null) {
      indentation.part(line.whole());
      open.openWorkedOut(line.whole());
    }
    return null;
  }

  @Override
  public @Nullable Void visitLines(LinesContext tree) {
    closeTable();
    pageAt(line.whole());
    indentation.lines(line.whole());
    return null;
  }

  @Override
  public @Nullable Void visitRows(RowsContext tree) {
    closeTable();
    pageAt(line.whole());
    indentation.lines(line.whole());
    rows = new RowsReader(name(tree.name()), line.whole());
    return null;
  }

  @Override
  public @Nullable Void visitListedRows(ListedRowsContext tree) {
    closeTable();
    indentation.lines(line.whole());
    Quoted listPage = tree.PAGE() == null ? null : quoted(tree.TEXT(1));
    addToPage(new ListedRows(name(tree.name()), quoted(tree.TEXT(0)), listPage, span(tree)));
    return null;
  }

  @Override
  public @Nullable Void visitShownFirst(ShownFirstContext tree) {
    TableDraft open = openTable();
    if (open != null) {
      open.addShownFirst(tree.name().stream().map(this::name).toList(), line.whole());
    }
    return null;
  }

  /** The table that the line belongs to; absent, with a fault, outside of tables. */
  private @Nullable TableDraft openTable() {
    if (table == null) {
      String head = line.get(0).getText();
      faults.fault(
          "not-in-a-table",
          line.whole(),
          "'%s' is not in a table".formatted(head),
          "write 'table' and the table's name above it");
    }
    return table;
  }

  @Override
  public @Nullable Void visitChange(ChangeContext tree) {
    boolean ofPage = tree.DOT() != null;
    Name place = name(tree.name(ofPage ? 1 : 0));
    Formula formula = formulas().formula(tree.formula());
    List<TerminalNode> texts = tree.TEXT();
    if (formula != null) {
      changes.add(
          new Change(
              ofPage ? name(tree.name(0)) : null,
              place,
              texts.size() > 1 ? quoted(texts.get(0)) : null,
              formula,
              quoted(texts.get(texts.size() - 1)),
              line.note(),
              span(tree)));
    }
    return null;
  }

  @Override
  public @Nullable Void visitRequire(RequireContext tree) {
    Formula condition = formulas().condition(tree.expression());
    Formula message = message(tree.TEXT());
    if (condition != null && message != null) {
      Requirement requirement = new Requirement(condition, message, line.note(), span(tree));
      indentation.line(requirement.span());
      if (table != null) {
        table.add(requirement);
      } else {
        closeTable();
        addToPage(requirement);
      }
    }
    return null;
  }

  @Override
  public @Nullable Void visitCaution(CautionContext tree) {
    Formula condition = formulas().condition(tree.expression());
    Formula message = message(tree.TEXT());
    if (condition != null && message != null) {
      Caution caution = new Caution(condition, message, line.note(), span(tree));
      indentation.line(caution.span());
      if (table != null) {
        table.add(caution);
      } else {
        closeTable();
        addToPage(caution);
      }
    }
    return null;
  }

  private @Nullable Formula message(TerminalNode text) {
    return faults.any() ? null : formulas().message(text.getSymbol());
  }

  @Override
  public @Nullable Void visitFunction(FunctionContext tree) {
    List<FunctionDefinition.Parameter> parameters = new ArrayList<>();
    for (ParameterContext parameter : tree.parameter()) {
      parameters.add(
          new FunctionDefinition.Parameter(name(parameter.name()), kind(parameter.kind())));
    }
    Formula formula = faults.any() ? null : formulas().formula(tree.formula());
    if (formula != null && formula.tolerance() != null) {
      faults.fault(
          "tolerance-in-function",
          formula.tolerance().span(),
          "a function cannot have a tolerance",
          "write ± at the end of the line or column that calls it");
      formula = null;
    }
    functions.add(
        new FunctionDefinition(name(tree.name()), parameters, formula, line.note(), span(tree)));
    return null;
  }

  @Override
  public @Nullable Void visitLine(LineContext tree) {
    Name name = name(tree.name());
    KindExpression kind = kind(tree.kind());
    Formula formula = formula(tree.formula());
    if (tree.kind() == null && tree.formula() == null) {
      faults.fault(
          "line-without-formula",
          name.span(),
          "'%s' has no formula and no kind".formatted(name),
          "write '%s = ' and a formula, or '%s : ' and a kind if the job enters it"
              .formatted(name, name));
    }
    if (name.key().equals("first row") || name.key().equals("this") || name.key().equals("above")) {
      faults.fault(
          "name-with-a-meaning",
          name.span(),
          "'%s' has a special meaning and cannot name a line".formatted(name),
          "give the line another name");
      return null;
    }
    boolean keep = !faults.any();
    add(
        new LineDefinition(
            name, keep ? kind : null, keep ? formula : null, line.note(), span(tree)));
    return null;
  }

  private void add(LineDefinition definition) {
    indentation.line(definition.span());
    if (table != null) {
      table.add(definition, faults);
    } else if (plan != null) {
      plan.add(definition, faults);
    } else {
      addToPage(definition);
    }
  }

  private @Nullable Formula formula(@Nullable FormulaContext tree) {
    return tree == null || faults.any() ? null : formulas().formula(tree);
  }

  private @Nullable KindExpression kind(@Nullable KindContext tree) {
    return tree == null ? null : new KindBuilder(source, faults).kind(tree);
  }

  private FormulaBuilder formulas() {
    return new FormulaBuilder(source, faults);
  }

  private Name name(NameContext tree) {
    return formulas().name(tree);
  }

  private Quoted quoted(TerminalNode text) {
    Token token = text.getSymbol();
    Span span = LineTokens.span(source, token);
    return new Quoted(TextBuilder.words(span), span);
  }

  private Span span(ParserRuleContext tree) {
    return LineTokens.span(source, tree);
  }
}
