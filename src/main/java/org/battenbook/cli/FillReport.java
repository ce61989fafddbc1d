package org.battenbook.cli;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.battenbook.book.Line;
import org.battenbook.book.Page;
import org.battenbook.book.PlanStatement;
import org.battenbook.book.PlanTable;
import org.battenbook.book.Table;
import org.battenbook.source.Ink;
import org.battenbook.source.SourceText;
import org.battenbook.value.Value;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.FilledValue;
import org.battenbook.workbook.Verdict;

/**
 * What a maker wants to see of a filled job: first what the job lists, in tables, then the pages
 * whose lines it fills in and those that hold nothing but results; then the checks that fail, the
 * cautions, and the inputs that are missing.
 */
final class FillReport {
  private final Filled filled;
  private final Output out;

  FillReport(Filled filled, Output out) {
    this.filled = filled;
    this.out = out;
  }

  void print() {
    out.line(Ink.HEADING, filled.title());
    out.line();
    List<Page> others = new ArrayList<>(filled.book().pages());
    List<Page> lists = others.stream().filter(page -> !ownTables(page).isEmpty()).toList();
    lists.forEach(page -> new PageReport(filled, out).printFirst(page, ownTables(page)));
    others.removeAll(lists);
    List<Page> results = others.stream().filter(this::isShown).toList();
    results.forEach(page -> new PageReport(filled, out).printFirst(page, page.tables()));
    others.removeAll(results);
    printRequirements();
    printCautions();
    printMissing();
    printOthers(others);
  }

  private boolean isShown(Page page) {
    return page.lines().stream().anyMatch(this::isOwn) || holdsResults(page);
  }

  private List<Table> ownTables(Page page) {
    return page.tables().stream().filter(this::isOwn).toList();
  }

  /** Of what is planned its totals are told; what goes into a plan only where the job writes it. */
  private boolean isOwn(Table table) {
    SourceText job = filled.book().source();
    PlanStatement plan = table.plan();
    if (plan != null) {
      return table.key().equals(plan.table(PlanTable.TOTALS))
          && filled.rows(plan.parts().table()).areStatedIn(job);
    }
    boolean isPlannedWith =
        filled.book().plans().stream()
            .anyMatch(p -> p.parts().table() == table || p.stock().table() == table);
    return isPlannedWith ? table.isWrittenIn(job) : filled.rows(table).areStatedIn(job);
  }

  /**
   * Whether the job brings the line or fills it in; a standard that it changes is none of these.
   */
  private boolean isOwn(Line line) {
    return line.layers().stream()
        .anyMatch(layer -> layer.because() == null && isOwn(layer.span().source()));
  }

  private boolean isOwn(Object source) {
    return source == filled.book().source();
  }

  private boolean holdsResults(Page page) {
    return !page.lines().isEmpty()
        && page.tables().isEmpty()
        && page.lines().stream().noneMatch(this::standsAlone);
  }

  private boolean standsAlone(Line line) {
    return filled.checked().place(line).needs().isEmpty();
  }

  private void printRequirements() {
    printChecks("Checks that fail", Ink.FAULT, Verdict::isNo);
    printChecks("Checks with an error", Ink.FAULT, check -> check.value().isError());
    printChecks("Checks that need an input", Ink.CAUTION, FillReport::needsInput);
  }

  private void printChecks(String heading, Ink ink, Predicate<Verdict> chosen) {
    printVerdicts(heading, ink, filled.requirements().stream().filter(chosen).toList());
  }

  private static boolean needsInput(Verdict check) {
    return !check.value().isKnown() && !check.value().isError();
  }

  private void printCautions() {
    List<Verdict> firing = filled.cautions().stream().filter(Verdict::isYes).toList();
    printVerdicts("Cautions for this job", Ink.CAUTION, firing);
    List<String> standing = filled.standingCautions().stream().map(Verdict::text).toList();
    printList("General cautions, for every job", Ink.CAUTION, standing);
  }

  private void printVerdicts(String heading, Ink ink, List<Verdict> verdicts) {
    List<String> items = new ArrayList<>();
    for (Verdict verdict : verdicts) {
      items.add(verdict.text() + "  " + verdict.at());
    }
    printList(heading, ink, items);
  }

  /** What people have still to fill in, each once, however many values wait for it. */
  private void printMissing() {
    Set<String> missing = new LinkedHashSet<>();
    for (Page page : filled.book().pages()) {
      page.lines().forEach(line -> addMissing(filled.value(line), missing));
      for (Table table : page.tables()) {
        for (int row = 0; row < filled.rows(table).count(); row++) {
          int at = row;
          table.columns().forEach(c -> addMissing(filled.value(c, at), missing));
        }
      }
    }
    printList("Inputs still needed", Ink.CAUTION, List.copyOf(missing));
  }

  private static void addMissing(FilledValue value, Set<String> missing) {
    boolean isEmpty = value.staysEmpty();
    if (!isEmpty && value.value() instanceof Value.Waiting waiting && !waiting.atFault()) {
      missing.add(waiting.on());
    }
  }

  private void printList(String heading, Ink ink, List<String> items) {
    if (items.isEmpty()) {
      return;
    }
    out.line(ink, heading);
    for (String item : items) {
      String lead = "  · ";
      for (String line : WrappedText.lines(item, PageReport.WIDTH - 4)) {
        out.line(lead + line);
        lead = "    ";
      }
    }
    out.line();
  }

  private void printOthers(List<Page> others) {
    if (!others.isEmpty()) {
      String names = String.join(", ", others.stream().map(Page::toString).toList());
      String hint = "More pages (--page NAME): " + names;
      for (String line : WrappedText.lines(hint, PageReport.WIDTH)) {
        out.line(Ink.ASIDE, line);
      }
    }
  }
}
