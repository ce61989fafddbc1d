package org.battenbook.syntax;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.battenbook.number.Rational;
import org.jspecify.annotations.Nullable;

/** A workbook file in one line, for tables of expectations: what stands where, in order. */
public final class OutlineText {
  private OutlineText() {}

  public static String of(WorkbookFile file) {
    List<String> parts = new ArrayList<>();
    if (file.title() != null) {
      parts.add("workbook " + file.title().text() + edition(file.edition()));
    }
    file.follows()
        .forEach(one -> parts.add("follows " + one.path().text() + edition(one.edition())));
    if (file.currency() != null) {
      parts.add("currency " + file.currency());
    }
    if (!file.pageOrder().isEmpty()) {
      parts.add("pages " + file.pageOrder());
    }
    if (file.lengths() != null) {
      parts.add("lengths " + step(file.lengths().step()) + file.lengths().unit());
    }
    file.changes().forEach(change -> parts.add(change(change)));
    file.functions().forEach(function -> parts.add(function(function)));
    file.pages().forEach(page -> parts.add(page(page)));
    return String.join("; ", parts);
  }

  private static String edition(@Nullable Quoted edition) {
    return edition == null ? "" : " edition " + edition.text();
  }

  private static String step(@Nullable Rational step) {
    return step == null ? "" : step + " ";
  }

  private static String change(Change change) {
    String page = change.page() == null ? "" : change.page() + ".";
    String row = change.row() == null ? "" : " row " + change.row().text();
    String because = " because " + change.because().text();
    return "change "
        + page
        + change.place()
        + row
        + " = "
        + TreeText.of(change.formula())
        + because;
  }

  private static String function(FunctionDefinition function) {
    String parameters =
        function.parameters().stream()
            .map(p -> p.name() + kind(p.kind()))
            .collect(Collectors.joining(", ", "(", ")"));
    return "find " + function.name() + parameters + formula(function.formula());
  }

  private static String page(PageSection page) {
    String title = page.title() == null ? "" : " titled " + page.title().text();
    return "page "
        + page.name()
        + title
        + items(page.items(), OutlineText::item)
        + note(page.note());
  }

  private static <T> String items(List<T> items, java.util.function.Function<T, String> each) {
    return items.stream().map(each).collect(Collectors.joining("; ", " [", "]"));
  }

  private static String item(PageItem item) {
    if (item instanceof LineDefinition line) {
      return line(line);
    }
    if (item instanceof TableSection table) {
      return table(table);
    }
    if (item instanceof RowsSection rows) {
      return rows(rows);
    }
    if (item instanceof ListedRows rows) {
      String page = rows.page() == null ? "" : " page " + rows.page().text();
      return "rows of " + rows.table() + " from " + rows.file().text() + page;
    }
    if (item instanceof PlanSection plan) {
      return plan(plan);
    }
    if (item instanceof Requirement requirement) {
      return requirement(requirement);
    }
    return caution((Caution) item);
  }

  private static String line(LineDefinition line) {
    String kind = kind(line.kind());
    return line.name()
        + kind
        + formula(line.formula())
        + (line.isAtFault() ? " at fault" : "")
        + note(line.note());
  }

  private static String formula(@Nullable Formula formula) {
    return formula == null ? "" : " = " + TreeText.of(formula);
  }

  private static String note(String note) {
    return note.isEmpty() ? "" : " noted " + note;
  }

  private static String kind(@Nullable KindExpression kind) {
    if (kind == null) {
      return "";
    }
    if (kind instanceof KindExpression.RowOf row) {
      return " : row of " + row.table();
    }
    StringBuilder product = new StringBuilder();
    for (KindExpression.Factor factor : ((KindExpression.Product) kind).factors()) {
      String sign = factor.divides() ? " / " : product.isEmpty() ? " : " : " * ";
      product.append(sign).append(factor.name());
      product.append(factor.power() == 1 ? "" : "^" + factor.power());
    }
    return product.toString();
  }

  private static String plan(PlanSection plan) {
    StringBuilder text = new StringBuilder(plan.cutting() + " plan " + plan.name());
    plan.settings().forEach(setting -> text.append(" / ").append(line(setting)));
    text.append("; parts ").append(source(plan.parts()));
    text.append("; stock ").append(source(plan.stock()));
    if (plan.keep() != null) {
      text.append("; keep ").append(source(plan.keep()));
    }
    if (plan.record() != null) {
      text.append("; record ").append(source(plan.record()));
    }
    return text.toString();
  }

  private static String source(PlanSection.Source source) {
    StringBuilder text = new StringBuilder(source.table().text());
    source.roles().forEach(role -> text.append(" %s=%s".formatted(role.role(), role.column())));
    return text.toString();
  }

  private static String opening(Opening opening) {
    StringBuilder text =
        new StringBuilder("for each %s of %s".formatted(opening.each(), opening.of()));
    if (opening.count() != null) {
      text.append(", %s to %s".formatted(opening.count().number(), opening.count().upTo()));
    }
    opening.cells().forEach(cell -> text.append(" / ").append(line(cell)));
    return text.toString();
  }

  private static String table(TableSection table) {
    List<String> parts = new ArrayList<>();
    table.openings().forEach(opening -> parts.add(opening(opening)));
    table.given().forEach(column -> parts.add("given " + line(column)));
    table.workedOut().forEach(column -> parts.add("worked out " + line(column)));
    table.requirements().forEach(requirement -> parts.add(requirement(requirement)));
    table.cautions().forEach(caution -> parts.add(caution(caution)));
    if (!table.shownFirst().isEmpty()) {
      parts.add("shows " + table.shownFirst());
    }
    String key = table.key() == null ? "" : " by " + table.key();
    return "table " + table.name() + key + items(parts, part -> part) + note(table.note());
  }

  private static String rows(RowsSection rows) {
    List<String> written = new ArrayList<>();
    for (int row = 0; row < rows.rows().rowCount(); row++) {
      List<String> cells = new ArrayList<>();
      for (int column = 0; column < rows.rows().width(); column++) {
        cells.add(rows.rows().span(row, column).text());
      }
      written.add(cells + note(rows.rows().note(row)));
    }
    return "rows of " + rows.table() + " " + rows.headings() + items(written, row -> row);
  }

  private static String requirement(Requirement requirement) {
    return "require "
        + TreeText.of(requirement.condition())
        + " else "
        + TreeText.of(requirement.message());
  }

  private static String caution(Caution caution) {
    return "caution " + TreeText.of(caution.condition()) + " say " + TreeText.of(caution.message());
  }
}
