package org.battenbook.keep;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.battenbook.book.Column;
import org.battenbook.book.PlanRole;
import org.battenbook.book.PlanStatement.Source;
import org.battenbook.number.Rational;
import org.battenbook.value.Value;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.FilledPlan;
import org.battenbook.workbook.FilledRow;
import org.battenbook.workbook.PlannedMaterial;
import org.battenbook.workbook.TakenStock;
import org.jspecify.annotations.Nullable;

/** What one plan takes of the rack, and what it leaves. */
final class PlanKeeping {
  private final Filled filled;
  private final FilledPlan plan;
  private final Source stock;
  private final Source keep;
  private final CellText cells;
  private final List<PlanRole> sizes;

  PlanKeeping(Filled filled, FilledPlan plan, Source keep) {
    this.filled = filled;
    this.plan = plan;
    this.stock = plan.statement().stock();
    this.keep = keep;
    this.cells = new CellText(filled.checked());
    this.sizes =
        plan.isOfSticks() ? List.of(PlanRole.LENGTH) : List.of(PlanRole.WIDTH, PlanRole.HEIGHT);
  }

  Source keep() {
    return keep;
  }

  /** The table that the job remembers in what it took; absent where it does not. */
  @Nullable Source record() {
    return plan.statement().record();
  }

  /** How many are taken of rows of the rack. */
  Map<Integer, Taken> taken() {
    Map<Integer, Taken> taken = new TreeMap<>();
    ofRack().forEach((row, parts) -> taken.put(row.index(), taken(row, parts)));
    taken.values().removeIf(one -> one.taken() == 0);
    return taken;
  }

  /** A stick with flaws is several stretches of stock: it is taken as often as any of them. */
  private Taken taken(FilledRow row, List<TakenStock> parts) {
    int most = parts.stream().mapToInt(TakenStock::fromStock).max().orElse(0);
    return new Taken(
        most,
        row.value(column(keep, PlanRole.ON_HAND)).exactNumber().map(PlanKeeping::whole).orElse(0));
  }

  private static int whole(Rational number) {
    return number.floor().intValue();
  }

  private Map<FilledRow, List<TakenStock>> ofRack() {
    Map<Integer, FilledRow> rows = new TreeMap<>();
    Map<FilledRow, List<TakenStock>> parts = new LinkedHashMap<>();
    for (TakenStock one : plan.allStock()) {
      Optional<FilledRow> row = one.row().in(keep.table());
      row.map(found -> Objects.requireNonNullElse(rows.putIfAbsent(found.index(), found), found))
          .ifPresent(same -> parts.computeIfAbsent(same, first -> new ArrayList<>()).add(one));
    }
    return parts;
  }

  /** The offcuts worth keeping, and the stretches of taken sticks that nothing was cut from. */
  List<NewRow> offcuts() {
    List<NewRow> offcuts = new ArrayList<>();
    for (PlannedMaterial material : plan.materials()) {
      for (PlannedMaterial.Piece piece : material.taken()) {
        for (FilledRow left : left(piece)) {
          FilledRow from = piece.row().held("stock").orElseThrow();
          String name = OffcutName.of(filled, plan, left);
          NewRow offcut = offcut(name, from, 1);
          sizes.forEach(size -> put(offcut, size, left.value(leftSize(size)).value()));
          offcuts.add(offcut);
        }
      }
    }
    ofRack().forEach((row, parts) -> offcuts.addAll(untouched(row, parts)));
    return offcuts;
  }

  /** A stick leaves its own end; what a sheet leaves are rows. */
  private List<FilledRow> left(PlannedMaterial.Piece piece) {
    List<FilledRow> left = plan.isOfSticks() ? List.of(piece.row()) : piece.offcuts();
    return left.stream().filter(row -> row.isYes("kept")).toList();
  }

  private String leftSize(PlanRole size) {
    return plan.isOfSticks() ? "offcut" : size.words();
  }

  private List<NewRow> untouched(FilledRow row, List<TakenStock> parts) {
    int taken = taken(row, parts).taken();
    List<NewRow> rests = new ArrayList<>();
    for (TakenStock part : parts) {
      int count = taken - part.fromStock();
      if (count > 0 && isWorthKeeping(part.row())) {
        String wanted = "%s, offcut of %s".formatted(filled.title(), part.name());
        String name = OffcutName.free(wanted, filled.rows(keep.table()).keys());
        NewRow rest = offcut(name, part.row(), count);
        sizes.forEach(size -> put(rest, size, value(part.row(), size)));
        rests.add(rest);
      }
    }
    return rests;
  }

  private boolean isWorthKeeping(FilledRow part) {
    Column least = stock.column(PlanRole.MINIMUM_OFFCUT);
    return sizes.stream()
        .map(size -> part.number(column(stock, size).name().key()).orElse(Rational.ZERO))
        .allMatch(
            size ->
                size.signum() > 0
                    && (least == null
                        || size.compareTo(part.number(least.name().key()).orElse(Rational.ZERO))
                            >= 0));
  }

  private NewRow offcut(String name, FilledRow from, int count) {
    NewRow offcut = new NewRow(keep, name);
    putMaterial(offcut, keep, from);
    return offcut.with(PlanRole.ON_HAND, Integer.toString(count)).with(PlanRole.OFFCUT, "true");
  }

  private void put(NewRow offcut, PlanRole size, Value value) {
    offcut.with(size, cells.atMost(value, column(keep, size)));
  }

  private void putMaterial(NewRow row, Source into, FilledRow from) {
    put(row, into, PlanRole.MATERIAL, from);
  }

  private void put(NewRow row, Source into, PlanRole role, FilledRow from) {
    Column here = into.column(role);
    if (here != null && stock.column(role) != null) {
      row.with(role, cells.exactly(value(from, role), here));
    }
  }

  private Value value(FilledRow row, PlanRole role) {
    return row.value(column(stock, role)).value();
  }

  private static Column column(Source source, PlanRole role) {
    return Objects.requireNonNull(source.column(role));
  }

  /** What was taken, for the job itself to remember. */
  List<NewRow> records(Source into) {
    List<NewRow> records = new ArrayList<>();
    for (TakenStock one : plan.stock()) {
      NewRow record =
          new NewRow(into, OffcutName.free(one.name(), filled.rows(into.table()).keys()));
      putMaterial(record, into, one.row());
      sizes.forEach(size -> put(record, into, size, one.row()));
      record.with(PlanRole.BOUGHT, Integer.toString(one.toBuy()));
      record.with(PlanRole.FROM_STOCK, Integer.toString(one.fromStock()));
      if (one.toBuy() > 0) {
        put(record, into, PlanRole.PRICE, one.row());
      }
      records.add(record);
    }
    return records;
  }
}
