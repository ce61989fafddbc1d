package org.battenbook.keep;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.battenbook.book.Column;
import org.battenbook.book.PlanRole;
import org.battenbook.book.PlanStatement.Source;
import org.battenbook.book.Table;
import org.battenbook.edit.BookRevision;
import org.battenbook.edit.EditRefused;
import org.battenbook.number.Rational;
import org.battenbook.source.Diagnostic;
import org.battenbook.source.SourceText;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.FilledPlan;
import org.battenbook.workbook.FilledRow;
import org.battenbook.workbook.FilledValue;
import org.battenbook.workbook.Workbook;

/**
 * What plans change in the workbooks once all is cut as they say: stock that was used is removed,
 * offcuts are added, and the job records what it used. Nothing is written here.
 */
public final class Keeping {
  private static final Pattern WHOLE = Pattern.compile("\\d+");

  private final Filled filled;
  private final BookRevision revision;
  private Map<SourceText, String> texts = Map.of();
  private final List<Change> changes = new ArrayList<>();
  private final Map<Table, Map<Integer, Taken>> taken = new LinkedHashMap<>();
  private final Map<Table, Column> counts = new LinkedHashMap<>();

  /**
   * A change in a file.
   *
   * @param file as its user would name it
   * @param told for people
   */
  public record Change(String file, String told) {}

  private Keeping(Filled filled) {
    this.filled = filled;
    this.revision = filled.revision();
  }

  /**
   * What some plans of a job change. The changed texts are read and filled, to see that the counts
   * are as they should be.
   *
   * @throws NotKept where that is not known, or cannot be written, or something in the workbook
   *     stands against it
   * @throws org.battenbook.workbook.PlansPending where plans are still to be made
   */
  public static Keeping of(Filled filled, List<FilledPlan> plans) throws NotKept {
    filled.requirePlans();
    Keeping keeping = new Keeping(filled);
    try {
      keeping.keep(plans);
      keeping.check();
    } catch (EditRefused refused) {
      throw new NotKept(
          refused.repair().isEmpty()
              ? refused.message()
              : refused.message() + ": " + refused.repair());
    }
    return keeping;
  }

  /** The new text of each file that changes, by the text as it was loaded. */
  public Map<SourceText, String> texts() {
    return texts;
  }

  public List<Change> changes() {
    return List.copyOf(changes);
  }

  private void keep(List<FilledPlan> plans) throws NotKept, EditRefused {
    List<PlanKeeping> kept = new ArrayList<>();
    for (FilledPlan plan : plans) {
      Source keep = plan.statement().keep();
      if (keep != null) {
        refuseBroken(plan);
        kept.add(new PlanKeeping(filled, plan, keep));
      }
    }
    if (kept.isEmpty()) {
      throw new NotKept("no plan of this job keeps offcuts; add 'keep in' to a plan");
    }
    for (PlanKeeping plan : kept) {
      take(plan);
    }
    lower();
    for (PlanKeeping plan : kept) {
      add(plan);
    }
    if (changes.isEmpty()) {
      throw new NotKept("nothing to update: no part is planned, or the stock is already updated");
    }
  }

  private static void refuseBroken(FilledPlan plan) throws NotKept {
    if (!plan.broken().isEmpty()) {
      throw new NotKept(
          "the stock of the plan '%s' cannot be updated while this check fails: %s"
              .formatted(plan.name(), plan.broken().get(0).text()));
    }
  }

  /** Of one rack, several plans may take. */
  private void take(PlanKeeping plan) {
    Table rack = plan.keep().table();
    counts.put(rack, Objects.requireNonNull(plan.keep().column(PlanRole.ON_HAND)));
    Map<Integer, Taken> ofTable = taken.computeIfAbsent(rack, first -> new TreeMap<>());
    plan.taken().forEach((row, one) -> ofTable.merge(row, one, (a, b) -> a.and(b.taken())));
  }

  private void lower() throws NotKept, EditRefused {
    for (Map.Entry<Table, Column> count : counts.entrySet()) {
      Table table = count.getKey();
      Map<Integer, Taken> rows = Objects.requireNonNull(taken.get(table));
      for (Map.Entry<Integer, Taken> row : rows.entrySet()) {
        tellLowered(table, row.getKey(), count.getValue(), row.getValue());
        lower(count.getValue(), row.getKey(), row.getValue());
      }
    }
  }

  /** A count that is a formula stays, and what is taken is taken off. */
  private void lower(Column count, int row, Taken taken) throws EditRefused {
    String now = revision.cellText(count, row);
    boolean isNumber = now.isEmpty() || WHOLE.matcher(now).matches();
    revision.setWrittenCell(
        count,
        row,
        isNumber ? Integer.toString(taken.left()) : "(%s) - %d".formatted(now, taken.taken()));
  }

  private void tellLowered(Table table, int row, Column column, Taken one) throws NotKept {
    String name = filled.rows(table).name(row);
    if (one.left() < 0) {
      throw new NotKept(
          "\"%s\" of '%s' is used %d times, but its '%s' is %d"
              .formatted(name, table, one.taken(), column.name(), one.onHand()));
    }
    changes.add(
        new Change(
            filled.rows(table).nameSpan(row).source().name(),
            "%s of \"%s\" in '%s': %d instead of %d"
                .formatted(column.name(), name, table, one.left(), one.onHand())));
  }

  private void add(PlanKeeping plan) throws EditRefused {
    Table rack = plan.keep().table();
    List<NewRow> offcuts = plan.offcuts();
    boolean isInJob = false;
    for (NewRow offcut : offcuts) {
      SourceText file = revision.addRow(rack, offcut.cells());
      isInJob |= file.name().equals(filled.file());
      tell(file, rack, offcut);
    }
    if (isInJob && filled.rows(rack).count() == 0) {
      changes.add(
          new Change(
              filled.file(),
              "no file has 'rows of %s' yet, so these rows are in the job; other jobs do not see them"
                  .formatted(rack)));
    }
    Source record = plan.record();
    if (record != null) {
      for (NewRow row : plan.records(record)) {
        tell(revision.addRowToJob(record.table(), row.cells()), record.table(), row);
      }
    }
  }

  private void tell(SourceText file, Table table, NewRow row) {
    List<String> cells =
        table.columns().stream()
            .flatMap(column -> Stream.ofNullable(row.cells().get(column)))
            .toList();
    changes.add(
        new Change(file.name(), "new in '%s': %s".formatted(table, String.join(" | ", cells))));
  }

  /** Reads the changed texts as they will be read, and looks whether the counts come out right. */
  private void check() throws NotKept, EditRefused {
    Workbook after = filled.reread(revision.texts());
    for (Diagnostic diagnostic : after.diagnostics()) {
      if (diagnostic.isFault()) {
        throw new NotKept(
            "with the new stock the workbook would have an error: " + diagnostic.message());
      }
    }
    texts = after.revisions();
    Filled now = after.fill();
    for (Map.Entry<Table, Map<Integer, Taken>> rack : taken.entrySet()) {
      for (Map.Entry<Integer, Taken> row : rack.getValue().entrySet()) {
        check(now, rack.getKey(), row.getKey(), row.getValue());
      }
    }
  }

  private void check(Filled now, Table rack, int row, Taken one) throws NotKept {
    Column column = Objects.requireNonNull(counts.get(rack));
    String name = filled.rows(rack).name(row);
    FilledValue count =
        FilledRow.of(now, rack.key()).stream()
            .filter(same -> same.name().equals(name))
            .map(same -> same.value(column.name().key()))
            .findFirst()
            .orElseThrow();
    if (!count.exactNumber().equals(Optional.of(Rational.of(one.left())))) {
      throw new NotKept(
          "%s is set at %s, not in its row of '%s'; change it there by hand to %d"
              .formatted(count.words(), count.at(), rack, one.left()));
    }
  }
}
