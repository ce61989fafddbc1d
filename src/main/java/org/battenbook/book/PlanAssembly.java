package org.battenbook.book;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.NearNames;
import org.battenbook.syntax.KindExpression;
import org.battenbook.syntax.LineDefinition;
import org.battenbook.syntax.Name;
import org.battenbook.syntax.PageItem;
import org.battenbook.syntax.PlanSection;
import org.battenbook.syntax.WorkbookFile;
import org.jspecify.annotations.Nullable;

/** Resolves the tables and columns that plans name, and defines the tables for their results. */
final class PlanAssembly {
  private final Book book;
  private final Diagnostics diagnostics;

  PlanAssembly(Book book, Diagnostics diagnostics) {
    this.book = book;
    this.diagnostics = diagnostics;
  }

  /** The plan of a section; null after a fault, such as a table or column that does not exist. */
  @Nullable PlanStatement state(Page page, PlanSection section) {
    PlanRoles roles = PlanRoles.of(section.cutting());
    PlanStatement.Source parts = source(section.parts(), roles.parts(), section.name());
    PlanStatement.Source stock = source(section.stock(), roles.stock(), section.name());
    PlanStatement.Source keep = written(section.keep(), roles.kept(), section.name());
    PlanStatement.Source record = written(section.record(), roles.recorded(), section.name());
    Map<PlanRole, Setting> settings = settings(page, section, roles);
    if (parts == null
        || stock == null
        || (section.keep() != null && keep == null)
        || (section.record() != null && record == null)) {
      return null;
    }
    return new PlanStatement(
        section.cutting(),
        section.name(),
        page,
        settings,
        parts,
        stock,
        keep,
        record,
        section.name().span());
  }

  private PlanStatement.@Nullable Source written(
      PlanSection.@Nullable Source stated, PlanRoles.Group roles, Name plan) {
    return stated == null ? null : source(stated, roles, plan);
  }

  private PlanStatement.@Nullable Source source(
      PlanSection.Source stated, PlanRoles.Group roles, Name plan) {
    Table table = book.table(stated.table().key());
    if (table == null) {
      List<String> tables = book.tables().stream().map(Table::toString).toList();
      missing(
          "no-such-table",
          stated.table(),
          "there is no table '%s' above this plan",
          tables,
          "move the table above the plan");
      return null;
    }
    Map<PlanRole, Column> columns = new LinkedHashMap<>();
    boolean complete = true;
    for (PlanSection.Role role : stated.roles()) {
      Column column = column(table, role.column());
      PlanRole known = column == null ? null : known(role.role(), roles, columns);
      complete &= known != null;
      if (known != null) {
        columns.put(known, column);
      }
    }
    for (PlanRole role : roles.all()) {
      if (complete && roles.needed().contains(role) && !columns.containsKey(role)) {
        complete = false;
        diagnostics.fault(
            "plan-role-missing",
            stated.table().span(),
            "the plan '%s' does not say which column of '%s' is the %s"
                .formatted(plan, table, role.words()),
            "write '%s = ' and the name of the column below this line".formatted(role.words()));
      }
    }
    return complete ? new PlanStatement.Source(table, columns) : null;
  }

  /**
   * The role with a name; null after a fault if there is none, or it is written already.
   *
   * @param earlier the roles before it
   */
  private @Nullable PlanRole known(Name name, PlanRoles.Group roles, Map<PlanRole, ?> earlier) {
    PlanRole role = named(name, roles);
    if (role == null) {
      diagnostics.fault(
          "no-such-role",
          name.span(),
          "a plan has no '%s' here".formatted(name),
          "choose from: " + words(roles));
      return null;
    }
    if (earlier.containsKey(role)) {
      diagnostics.fault(
          "role-twice",
          name.span(),
          "'%s' is used twice".formatted(name),
          "remove one of the two lines");
      return null;
    }
    return role;
  }

  private static @Nullable PlanRole named(Name name, PlanRoles.Group roles) {
    for (PlanRole role : roles.all()) {
      if (role.words().equals(name.key())) {
        return role;
      }
    }
    return null;
  }

  private static String words(PlanRoles.Group roles) {
    return roles.all().stream().map(PlanRole::words).collect(Collectors.joining(", "));
  }

  private @Nullable Column column(Table table, Name name) {
    Column column = table.column(name.key());
    if (column == null) {
      List<String> columns = table.columns().stream().map(c -> c.name().text()).toList();
      missing(
          "no-such-column",
          name,
          "table '" + table + "' has no column '%s' above this plan",
          columns,
          "choose from: " + String.join(", ", columns));
    }
    return column;
  }

  private void missing(
      String code, Name name, String message, List<String> known, String otherwise) {
    diagnostics.fault(
        code,
        name.span(),
        message.formatted(name),
        () -> NearNames.questionOr(otherwise, name.text(), known));
  }

  private Map<PlanRole, Setting> settings(Page page, PlanSection section, PlanRoles roles) {
    Map<PlanRole, Setting> settings = new LinkedHashMap<>();
    for (LineDefinition setting : section.settings()) {
      PlanRole role = known(setting.name(), roles.settings(), settings);
      if (role != null) {
        Layer layer = new Layer(setting.formula(), null, setting.note(), setting.span());
        KindExpression kind = role.kind(setting.span());
        settings.put(role, new Setting(section.name(), setting.name(), page, kind, layer));
      }
    }
    return settings;
  }

  /** The definitions of the tables for the results of a plan. */
  List<PageItem> tables(PlanSection section, WorkbookFile made) {
    book.addGenerated(made.source(), section.name().span().source());
    return made.pages().get(0).items();
  }
}
