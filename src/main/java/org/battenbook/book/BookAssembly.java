package org.battenbook.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.battenbook.listing.Listing;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.NearNames;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.Caution;
import org.battenbook.syntax.FunctionDefinition;
import org.battenbook.syntax.KindExpression;
import org.battenbook.syntax.LineDefinition;
import org.battenbook.syntax.ListedRows;
import org.battenbook.syntax.Name;
import org.battenbook.syntax.PageItem;
import org.battenbook.syntax.PageSection;
import org.battenbook.syntax.PlanSection;
import org.battenbook.syntax.Quoted;
import org.battenbook.syntax.Requirement;
import org.battenbook.syntax.RowsSection;
import org.battenbook.syntax.ShownAs;
import org.battenbook.syntax.TableSection;
import org.battenbook.syntax.WorkbookFile;
import org.jspecify.annotations.Nullable;

/**
 * Builds one {@link Book} from the files of a job. It adds the definitions of all files first, then
 * their rows, then their changes, so that each step can name what the steps before it added.
 */
public final class BookAssembly {
  private final Diagnostics diagnostics;
  private final FollowedFiles files;
  private final Book book;
  private final OpeningAssembly openings;
  private final PlanAssembly plans;

  private BookAssembly(FollowedFiles files, Diagnostics diagnostics) {
    this.files = files;
    this.diagnostics = diagnostics;
    WorkbookFile job = files.job();
    this.book =
        new Book(
            job.source(),
            title(job),
            currency(),
            lengths(),
            files.seen(),
            editions(),
            files.pictures());
    this.openings = new OpeningAssembly(book, diagnostics);
    this.plans = new PlanAssembly(book, diagnostics);
  }

  /**
   * Builds the book of a job.
   *
   * @param diagnostics receives faults such as duplicate or unknown names
   * @return the book; after a fault it lacks what could not be added
   */
  public static Book assemble(FollowedFiles files, Diagnostics diagnostics) {
    return new BookAssembly(files, diagnostics).assemble();
  }

  private Book assemble() {
    files.inOrder().forEach(this::addDefinitions);
    openings.resolve();
    files.inOrder().forEach(this::addRows);
    ChangeAssembly changes = new ChangeAssembly(book, diagnostics);
    files.inOrder().forEach(file -> file.changes().forEach(changes::add));
    files.inOrder().forEach(this::orderPages);
    new BookSize(diagnostics).addWritten(book);
    return book;
  }

  private static String title(WorkbookFile job) {
    return job.title() == null ? job.source().shortName() : job.title().text();
  }

  private @Nullable Name currency() {
    Name last = null;
    for (WorkbookFile file : files.inOrder()) {
      last = file.currency() == null ? last : file.currency();
    }
    return last;
  }

  private List<Edition> editions() {
    List<Edition> editions = new ArrayList<>();
    for (WorkbookFile file : files.inOrder()) {
      if (file.edition() != null) {
        editions.add(new Edition(file.source(), file.edition().text()));
      }
    }
    return editions;
  }

  private @Nullable ShownAs lengths() {
    ShownAs last = null;
    for (WorkbookFile file : files.inOrder()) {
      last = file.lengths() == null ? last : file.lengths();
    }
    return last;
  }

  private void addDefinitions(WorkbookFile file) {
    for (FunctionDefinition function : file.functions()) {
      addFunction(function);
    }
    for (PageSection section : file.pages()) {
      Page page = page(section);
      for (PageItem item : section.items()) {
        addDefinition(page, item);
      }
    }
  }

  private void addFunction(FunctionDefinition function) {
    FunctionDefinition earlier = book.function(function.name().key());
    if (earlier != null) {
      duplicate(function.name(), earlier.span());
      return;
    }
    book.add(function);
  }

  private Page page(PageSection section) {
    Page page = book.page(section.name().key());
    String title = section.title() == null ? null : section.title().text();
    if (page == null) {
      page =
          new Page(section.name(), title == null ? section.name().text() : title, section.note());
      book.add(page);
    } else if (title != null) {
      page.retitle(title);
    }
    return page;
  }

  private void addDefinition(Page page, PageItem item) {
    if (item instanceof LineDefinition line) {
      addLine(page, line);
    } else if (item instanceof TableSection table) {
      addTable(page, table);
    } else if (item instanceof PlanSection plan) {
      addPlan(page, plan);
    } else if (item instanceof Requirement requirement) {
      page.add(rule(requirement, page, null));
    } else if (item instanceof Caution caution) {
      page.add(rule(caution, page, null));
    }
  }

  private void addPlan(Page page, PlanSection section) {
    PlanStatement earlier = book.plan(section.name().key());
    PlanStatement plan = plans.state(page, section);
    if (earlier != null) {
      duplicate(section.name(), earlier.statement(), "give this one a different name");
    } else if (plan != null) {
      book.add(plan);
      for (PageItem item : plans.tables(section, files.planTables(section))) {
        addDefinition(page, item);
        if (item instanceof TableSection made) {
          Objects.requireNonNull(book.table(made.name().key())).planBy(plan);
        }
      }
    }
  }

  private void addLine(Page page, LineDefinition definition) {
    Line earlier = page.line(definition.name().key());
    boolean given = definition.formula() == null && definition.kind() != null;
    if (earlier == null) {
      page.add(new Line(definition.name(), page, definition.kind(), given, layer(definition)));
    } else if (earlier.isGiven() && earlier.layers().size() == 1 && !given) {
      earlier.set(layer(definition));
    } else {
      duplicate(definition.name(), earlier.layer().span());
    }
  }

  private static Layer layer(LineDefinition definition) {
    return new Layer(definition.formula(), null, definition.note(), definition.span());
  }

  private void addTable(Page page, TableSection section) {
    Table table = book.table(section.name().key());
    if (table == null) {
      table = newTable(page, section);
    } else if (section.key() != null && !section.key().key().equals(table.keyName().key())) {
      duplicate(section.name(), table.origin());
    }
    openings.state(table, section.openings());
    addColumns(page, table, section.given(), true);
    addColumns(page, table, section.workedOut(), false);
    for (Requirement requirement : section.requirements()) {
      table.add(rule(requirement, page, table));
    }
    for (Caution caution : section.cautions()) {
      table.add(rule(caution, page, table));
    }
    setShownFirst(table, section);
    if (!table.hasKeyColumn()) {
      addKeyColumn(page, table);
    }
  }

  /** Reports that a table has no key column, and adds one. */
  private void addKeyColumn(Page page, Table table) {
    Name key = table.keyName();
    List<String> columns = table.columns().stream().map(c -> c.name().text()).toList();
    diagnostics.fault(
        "no-key-column",
        key.span(),
        "rows of '%s' are named by '%s', but there is no such column".formatted(table, key),
        () ->
            NearNames.questionOr(
                "add '%s : text' under 'given'".formatted(key), key.text(), columns));
    KindExpression text = KindExpression.named("text", key.span());
    table.add(new Column(key, page, table, text, true, new Layer(null, null, "", key.span())));
  }

  private Table newTable(Page page, TableSection section) {
    Name key = section.key();
    if (key == null) {
      diagnostics.fault(
          "table-without-key",
          section.name().span(),
          "there is no table '%s'; a new table needs a column that names its rows"
              .formatted(section.name()),
          "write 'table %s by ' and the name of that column".formatted(section.name()));
      key = section.given().isEmpty() ? section.name() : section.given().get(0).name();
    }
    Table table = new Table(section.name(), page, key, section.note());
    page.add(table);
    book.add(table);
    return table;
  }

  private void addColumns(Page page, Table table, List<LineDefinition> definitions, boolean given) {
    for (LineDefinition definition : definitions) {
      Column earlier = table.column(definition.name().key());
      if (earlier == null) {
        table.add(
            new Column(
                definition.name(), page, table, definition.kind(), given, layer(definition)));
      } else {
        duplicate(definition.name(), earlier.layer().span());
      }
    }
  }

  private static Rule rule(Requirement requirement, Page page, @Nullable Table table) {
    Span span = requirement.span();
    Layer layer = new Layer(requirement.condition(), null, "", span);
    Condition condition = new Condition("check", page, table, layer);
    return new Rule(condition, true, requirement.message(), requirement.note(), span);
  }

  private static Rule rule(Caution caution, Page page, @Nullable Table table) {
    Span span = caution.span();
    Layer layer = new Layer(caution.condition(), null, "", span);
    Condition condition = new Condition("caution", page, table, layer);
    return new Rule(condition, false, caution.message(), caution.note(), span);
  }

  private void setShownFirst(Table table, TableSection section) {
    List<Column> columns = new ArrayList<>();
    for (Name name : section.shownFirst()) {
      Column column = table.column(name.key());
      if (column == null) {
        noSuchColumn(table, name);
      } else {
        columns.add(column);
      }
    }
    if (!columns.isEmpty()) {
      table.setShownFirst(columns);
    }
  }

  /** Checks the page order of a file. The last file that has one decides. */
  private void orderPages(WorkbookFile file) {
    List<Page> pages = new ArrayList<>();
    for (Name name : file.pageOrder()) {
      Page page = book.page(name.key());
      if (page == null) {
        diagnostics.fault(
            "no-such-page",
            name.span(),
            "there is no page '%s'".formatted(name),
            () ->
                NearNames.question(
                    name.text(), book.pages().stream().map(p -> p.name().text()).toList()));
      } else {
        pages.add(page);
      }
    }
    if (!pages.isEmpty()) {
      book.showFirst(pages);
    }
  }

  private void addRows(WorkbookFile file) {
    for (PageSection section : file.pages()) {
      for (PageItem item : section.items()) {
        if (item instanceof RowsSection rows) {
          addRows(rows);
        } else if (item instanceof ListedRows rows) {
          addRows(rows);
        }
      }
    }
  }

  private void addRows(ListedRows rows) {
    Table table = table(rows.table());
    if (table == null || diagnostics.isRefused()) {
      return;
    }
    if (table.plan() != null) {
      rowsOfPlan(table, table.plan(), rows.span());
      return;
    }
    if (openings.isOpened(table)) {
      diagnostics.fault(
          "list-of-opened-rows",
          rows.span(),
          "rows of '%s' come from another table, so no list can be read into it".formatted(table),
          "write their cells under 'rows of %s' in a workbook".formatted(table));
      return;
    }
    try {
      SourceText from = rows.span().source();
      Quoted page = rows.page();
      Listing list = files.list(rows.file(), from, page == null ? null : page.text());
      ListAssembly.segment(rows, table, list, diagnostics)
          .ifPresent(
              segment -> {
                book.addGenerated(segment.cells().source(), from);
                table.add(segment);
              });
    } catch (Loader.Unreadable bad) {
      bad.report(rows.file().span(), diagnostics);
    }
  }

  /** The table with a name; null after a fault if there is none. */
  private @Nullable Table table(Name name) {
    Table table = book.table(name.key());
    if (table == null) {
      diagnostics.fault(
          "no-such-table",
          name.span(),
          "there is no table '%s'".formatted(name),
          () -> tableRepair(name));
    }
    return table;
  }

  private String tableRepair(Name name) {
    Page page = book.page(name.key());
    List<String> onPage =
        page == null
            ? List.of()
            : book.tables().stream()
                .filter(table -> table.page() == page)
                .map(Table::toString)
                .toList();
    return onPage.isEmpty()
        ? NearNames.questionOrList(
            name.text(), book.tables().stream().map(Table::toString).toList())
        : "'%s' is a page; the tables on it are: %s".formatted(name, String.join(", ", onPage));
  }

  private void addRows(RowsSection rows) {
    Table table = table(rows.table());
    List<Column> columns = table == null ? List.of() : headings(table, rows.headings());
    if (table == null || columns.size() != rows.headings().size()) {
      return;
    }
    if (table.plan() != null) {
      rowsOfPlan(table, table.plan(), rows.span());
    } else if (openings.isOpened(table)) {
      openings.fill(table, rows, columns);
    } else {
      table.add(RowSegment.written(rows, columns, table.writtenRows()));
    }
  }

  private void rowsOfPlan(Table table, PlanStatement plan, Span rows) {
    diagnostics.fault(
        "rows-of-plan",
        rows,
        "the rows of '%s' come from the plan '%s'".formatted(table, plan.name()),
        "change its parts in '%s' or its stock in '%s'"
            .formatted(plan.parts().table(), plan.stock().table()));
  }

  private List<Column> headings(Table table, List<Name> headings) {
    Map<String, Column> found = new LinkedHashMap<>();
    for (Name heading : headings) {
      Column column = table.column(heading.key());
      if (column == null) {
        noSuchColumn(table, heading);
      } else {
        found.put(heading.key(), column);
      }
    }
    boolean named = openings.isOpened(table) || found.containsKey(table.keyName().key());
    if (!found.isEmpty() && !named && !table.forgetsKeyColumn()) {
      diagnostics.fault(
          "no-key-heading",
          headings.get(0).span(),
          "rows of '%2$s' need the column '%1$s'".formatted(table.keyName(), table),
          "add the heading '%s'".formatted(table.keyName()));
    }
    return List.copyOf(found.values());
  }

  private void noSuchColumn(Table table, Name name) {
    diagnostics.fault(
        "no-such-column",
        name.span(),
        "table '%s' has no column '%s'".formatted(table, name),
        () ->
            NearNames.questionOrList(
                name.text(), table.columns().stream().map(c -> c.name().text()).toList()));
  }

  private void duplicate(Name name, Span earlier) {
    duplicate(
        name,
        earlier,
        "give this one a different name, or write 'change %s = … because \"…\"' to replace that one"
            .formatted(name));
  }

  private void duplicate(Name name, Span earlier, String repair) {
    diagnostics.fault(
        "duplicate-name",
        name.span(),
        "'%s' is already defined at %s".formatted(name, earlier.place()),
        repair);
  }
}
