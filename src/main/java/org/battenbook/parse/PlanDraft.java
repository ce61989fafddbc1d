package org.battenbook.parse;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.battenbook.source.Span;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.LineDefinition;
import org.battenbook.syntax.Name;
import org.battenbook.syntax.PlanSection;
import org.battenbook.syntax.Reference;
import org.battenbook.syntax.Root;
import org.jspecify.annotations.Nullable;

/** A plan while its lines are read. */
final class PlanDraft {
  /** The tables that a plan names. */
  enum Part {
    PARTS("parts of"),
    STOCK("stock of"),
    KEEP("keep in"),
    RECORD("record in");

    private final String head;

    Part(String head) {
      this.head = head;
    }
  }

  private record Source(Name table, List<PlanSection.Role> roles) {}

  private final PlanSection.Cutting cutting;
  private final Name name;
  private final String note;
  private final List<LineDefinition> settings = new ArrayList<>();
  private final Map<Part, Source> sources = new LinkedHashMap<>();
  private @Nullable Source open;
  private Span span;

  PlanDraft(PlanSection.Cutting cutting, Name name, String note, Span span) {
    this.cutting = cutting;
    this.name = name;
    this.note = note;
    this.span = span;
  }

  /** Opens the part of the plan that tells of a table. */
  void open(Part part, Name table, Span head, LineFaults faults) {
    span = span.to(head);
    open = new Source(table, new ArrayList<>());
    if (sources.putIfAbsent(part, open) != null) {
      faults.fault(
          "plan-part-twice",
          head,
          "'%s' is in the plan '%s' twice".formatted(part.head, name),
          "put all rows into one table; 'for each' can create them from several tables");
    }
  }

  /** Adds a line to the part that is open; before the first, it is a setting of the plan. */
  void add(LineDefinition line, LineFaults faults) {
    span = span.to(line.span());
    if (line.isAtFault()) {
      return;
    }
    Formula formula = line.formula();
    if (formula == null || line.kind() != null) {
      faults.fault(
          "plan-line-without-formula",
          line.span(),
          "'%s' of the plan '%s' has no value".formatted(line.name(), name),
          "write '%s = …'".formatted(line.name()));
    } else if (open == null) {
      settings.add(line);
    } else {
      addRole(open, line.name(), formula, faults);
    }
  }

  private void addRole(Source source, Name role, Formula formula, LineFaults faults) {
    boolean isColumn =
        formula.expression() instanceof Reference reference
            && reference.root() == Root.HERE
            && reference.names().size() == 1
            && formula.shownAs() == null
            && formula.tolerance() == null;
    if (!isColumn) {
      faults.fault(
          "plan-needs-a-column",
          formula.span(),
          "'%s' of the plan '%s' must be the name of a column of '%s'"
              .formatted(role, name, source.table()),
          "calculate it in a column of '%s', and name that column here".formatted(source.table()));
      return;
    }
    Name column = ((Reference) formula.expression()).names().get(0);
    source.roles().add(new PlanSection.Role(role, column));
  }

  /** The plan; absent, with a fault, where it does not say what is cut from what. */
  @Nullable PlanSection section(LineFaults faults) {
    PlanSection.Source parts = source(Part.PARTS);
    PlanSection.Source stock = source(Part.STOCK);
    if (parts == null || stock == null) {
      String missing = parts == null ? Part.PARTS.head : Part.STOCK.head;
      faults.fault(
          "plan-part-missing",
          name.span(),
          "the plan '%s' has no '%s'".formatted(name, missing),
          "write '%s' and the name of a table below it, and its columns below that"
              .formatted(missing));
      return null;
    }
    return new PlanSection(
        cutting, name, settings, parts, stock, source(Part.KEEP), source(Part.RECORD), note, span);
  }

  private PlanSection.@Nullable Source source(Part part) {
    Source source = sources.get(part);
    return source == null ? null : new PlanSection.Source(source.table(), source.roles());
  }
}
