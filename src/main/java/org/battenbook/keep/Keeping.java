package org.battenbook.keep;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.battenbook.book.Column;
import org.battenbook.book.Loader;
import org.battenbook.book.PlanStatement.Source;
import org.battenbook.book.Table;
import org.battenbook.cutting.Planning;
import org.battenbook.number.Rational;
import org.battenbook.source.Diagnostic;
import org.battenbook.source.SourceText;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.FilledPlan;
import org.battenbook.workbook.FilledRow;
import org.battenbook.workbook.FilledValue;
import org.battenbook.workbook.Workbook;

/**
 * What plans change in the workbooks once all is cut as they say: what was taken of the rack is
 * there no more, offcuts are, and the job remembers what it took. Nothing is written here.
 */
public final class Keeping {
  private final Filled filled;
  private final WorkbookRevision revision;
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
    this.revision = new WorkbookRevision(filled.book());
  }

  /**
   * What some plans of a job change.
   *
   * @throws NotKept where that is not known, or cannot be written
   */
  public static Keeping of(Filled filled, List<FilledPlan> plans) throws NotKept {
    Keeping keeping = new Keeping(filled);
    keeping.keep(plans);
    return keeping;
  }

  /** The new text of each file that changes. */
  public Map<SourceText, String> texts() {
    return revision.texts();
  }

  public List<Change> changes() {
    return List.copyOf(changes);
  }

  private void keep(List<FilledPlan> plans) throws NotKept {
    List<PlanKeeping> kept = new ArrayList<>();
    for (FilledPlan plan : plans) {
      Source keep = plan.statement().keep();
      if (keep != null) {
        refuseBroken(plan);
        kept.add(new PlanKeeping(filled, plan, keep));
      }
    }
    if (kept.isEmpty()) {
      throw new NotKept("no plan here says where offcuts are kept: it would say 'keep in'");
    }
    for (PlanKeeping plan : kept) {
      take(plan);
    }
    lower();
    kept.forEach(this::add);
    if (changes.isEmpty()) {
      throw new NotKept(
          "nothing is planned that takes or leaves any stock: it may be kept already");
    }
  }

  private static void refuseBroken(FilledPlan plan) throws NotKept {
    if (!plan.broken().isEmpty()) {
      throw new NotKept(
          "nothing is kept of the plan '%s' while this does not hold: %s"
              .formatted(plan.name(), plan.broken().get(0).text()));
    }
  }

  /** Of one rack, several plans may take. */
  private void take(PlanKeeping plan) {
    Table rack = plan.keep().table();
    counts.put(rack, Objects.requireNonNull(plan.keep().column("on hand")));
    Map<Integer, Taken> ofTable = taken.computeIfAbsent(rack, first -> new TreeMap<>());
    plan.taken().forEach((row, one) -> ofTable.merge(row, one, (a, b) -> a.and(b.taken())));
  }

  private void lower() throws NotKept {
    for (Map.Entry<Table, Column> count : counts.entrySet()) {
      Table table = count.getKey();
      Map<Integer, Taken> rows = Objects.requireNonNull(taken.get(table));
      for (Map.Entry<Integer, Taken> row : rows.entrySet()) {
        tellLowered(table, row.getKey(), count.getValue(), row.getValue());
      }
      revision.lower(table, count.getValue(), rows);
    }
  }

  private void tellLowered(Table table, int row, Column column, Taken one) throws NotKept {
    String name = filled.checked().keys(table).name(row);
    if (one.left() < 0) {
      throw new NotKept(
          "\"%s\" of '%s' is taken %d times, and its '%s' is %d"
              .formatted(name, table, one.taken(), column.name(), one.onHand()));
    }
    changes.add(
        new Change(
            table.nameSpan(row).source().name(),
            "%s of \"%s\" in '%s': %d instead of %d"
                .formatted(column.name(), name, table, one.left(), one.onHand())));
  }

  private void add(PlanKeeping plan) {
    Table rack = plan.keep().table();
    List<NewRow> offcuts = plan.offcuts();
    tell(revision.add(rack, offcuts), rack, offcuts);
    if (!offcuts.isEmpty() && rack.rows().isEmpty()) {
      changes.add(
          new Change(
              filled.file(),
              "no file has 'rows of %s' yet: these stand in the job, where other jobs do not see them"
                  .formatted(rack)));
    }
    Source record = plan.record();
    if (record != null) {
      List<NewRow> records = plan.records(record);
      tell(revision.addToJob(record.table(), records), record.table(), records);
    }
  }

  private static List<String> cells(NewRow row, Table table) {
    return NewRows.columns(table, List.of(row)).stream()
        .map(column -> Objects.requireNonNull(row.cells().get(column)))
        .toList();
  }

  private void tell(SourceText file, Table table, List<NewRow> rows) {
    for (NewRow row : rows) {
      String cells = String.join(" | ", cells(row, table));
      changes.add(new Change(file.name(), "new in '%s': %s".formatted(table, cells)));
    }
  }

  /**
   * Reads the changed texts as they will be read, and looks whether the counts are as they should
   * be.
   *
   * @param loader that the job was read by
   * @param planning that knows the plans which stay as they are
   * @throws NotKept where something in the workbook stands against the change
   */
  public void check(Loader loader, Planning planning) throws NotKept {
    Workbook after;
    try {
      after = Workbook.open(filled.file(), new RevisedTexts(loader, texts()), planning);
    } catch (Loader.Unreadable unreadable) {
      throw new NotKept(String.valueOf(unreadable.getMessage()));
    }
    for (Diagnostic diagnostic : after.diagnostics()) {
      if (diagnostic.isFault()) {
        throw new NotKept(
            "with what is kept written into it, the workbook would be at fault: "
                + diagnostic.message());
      }
    }
    Filled now = after.fill();
    for (Map.Entry<Table, Map<Integer, Taken>> rack : taken.entrySet()) {
      for (Map.Entry<Integer, Taken> row : rack.getValue().entrySet()) {
        check(now, rack.getKey(), row.getKey(), row.getValue());
      }
    }
  }

  private void check(Filled now, Table rack, int row, Taken one) throws NotKept {
    Column column = Objects.requireNonNull(counts.get(rack));
    String name = filled.checked().keys(rack).name(row);
    FilledValue count =
        FilledRow.of(now, rack.key()).stream()
            .filter(same -> same.name().equals(name))
            .map(same -> same.value(column.name().key()))
            .findFirst()
            .orElseThrow();
    if (!count.exactNumber().equals(Optional.of(Rational.of(one.left())))) {
      throw new NotKept(
          "%s is set at %s, and not by its row of '%s': change it there by hand, to %d"
              .formatted(count.words(), count.at(), rack, one.left()));
    }
  }
}
