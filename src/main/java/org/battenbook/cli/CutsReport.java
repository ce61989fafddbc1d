package org.battenbook.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.battenbook.keep.Keeping;
import org.battenbook.keep.OffcutName;
import org.battenbook.source.Ink;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.FilledPlan;
import org.battenbook.workbook.FilledRow;
import org.battenbook.workbook.FilledValue;
import org.battenbook.workbook.PlannedMaterial;
import org.battenbook.workbook.PlannedMaterial.Piece;
import org.battenbook.workbook.PlannedMaterial.Stop;
import org.battenbook.workbook.TakenStock;
import org.battenbook.workbook.Verdict;

/**
 * The cut list: what does not fit on top, then material by material the stops and what each stick
 * or sheet is cut into, and last what to buy and what to take from stock.
 */
final class CutsReport {
  static final String NO_PLAN =
      "the job has no plan; a workbook makes one with 'stick plan' or 'sheet plan'";
  private static final String NO_PARTS =
      "nothing to cut: no part has a quantity, or all parts are cut already";

  private final Filled filled;
  private final Output out;

  CutsReport(Filled filled, Output out) {
    this.filled = filled;
    this.out = out;
  }

  /**
   * Prints the cut list of some plans.
   *
   * @param kept what was changed in the workbooks; empty where nothing was asked to be
   */
  void print(List<FilledPlan> plans, List<Keeping.Change> kept) {
    heading(filled.title() + ": cuts", Ink.HEADING);
    out.line();
    printList(
        "Checks that fail",
        Ink.FAULT,
        plans.stream().flatMap(plan -> plan.broken().stream()).map(CutsReport::told).toList());
    if (plans.stream().allMatch(plan -> plan.materials().isEmpty())) {
      wrapped(plans.isEmpty() ? NO_PLAN : NO_PARTS);
      out.line();
    }
    for (FilledPlan plan : plans) {
      plan.materials().forEach(material -> print(plan, material));
    }
    List<TakenStock> stock = plans.stream().flatMap(plan -> plan.stock().stream()).toList();
    printList("To buy", Ink.HEADING, toBuy(stock));
    printList("From stock", Ink.HEADING, stored(stock));
    printList(
        "General cautions, for every job",
        Ink.CAUTION,
        filled.standingCautions().stream().map(Verdict::text).toList());
    printList("Stock updates", Ink.HEADING, changed(kept));
    printSource(plans);
  }

  private static List<String> changed(List<Keeping.Change> kept) {
    return kept.stream().map(one -> one.file() + ": " + one.told()).toList();
  }

  private static String told(Verdict verdict) {
    return verdict.text() + "  " + verdict.at();
  }

  private void print(FilledPlan plan, PlannedMaterial material) {
    List<Piece> taken = material.taken();
    heading(material + ": " + taken(plan, taken.size()) + ", " + proof(material), Ink.HEADING);
    material.stops().forEach(this::print);
    printMerged(material);
    out.line();
    alike(taken).forEach(group -> print(plan, group));
  }

  private static String taken(FilledPlan plan, int count) {
    String one = plan.isOfSticks() ? "stick" : "sheet";
    return count == 1 ? "1 " + one : count + " " + one + "s";
  }

  private static String proof(PlannedMaterial material) {
    FilledRow total = material.total();
    if (material.isProven()) {
      return "proven: no cheaper plan exists";
    }
    if (!total.number("parts planned").equals(total.number("parts needed"))) {
      return "%s of %s parts planned"
          .formatted(total.shown("parts planned"), total.shown("parts needed"));
    }
    return total.shown("cannot plan").isEmpty()
        ? "a better plan could save up to " + total.shown("possible savings")
        : "planned without the parts that cannot be planned";
  }

  /** {@code stop at 15 7/8 in: 10 cuts: Heron, top and bottom (2), …}. */
  private void print(Stop stop) {
    Map<String, Integer> labels = new LinkedHashMap<>();
    stop.cuts().forEach(cut -> labels.merge(cut.shown("label"), 1, Integer::sum));
    String called =
        labels.entrySet().stream()
            .map(label -> "%s (%d)".formatted(label.getKey(), label.getValue()))
            .collect(Collectors.joining(", "));
    int count = stop.cuts().size();
    wrapped(
        "stop at %s: %s: %s"
            .formatted(stop.row().shown("length"), count == 1 ? "1 cut" : count + " cuts", called));
  }

  private void printMerged(PlannedMaterial material) {
    List<FilledRow> lengthened = material.lengthened();
    if (!lengthened.isEmpty()) {
      wrapped(
          "with merged stops: %d instead of %d; see 'longer by' for the %d cuts that are longer"
              .formatted(material.stops().size(), material.lengths(), lengthened.size()));
    }
  }

  /** Sticks of one stock with the same parts in the same places are told once. */
  private static List<List<Piece>> alike(List<Piece> taken) {
    Map<List<String>, List<Piece>> groups = new LinkedHashMap<>();
    for (Piece piece : taken) {
      groups.computeIfAbsent(likeness(piece), first -> new ArrayList<>()).add(piece);
    }
    return List.copyOf(groups.values());
  }

  /** What two sticks have in common that are cut alike; a sheet is like no other. */
  private static List<String> likeness(Piece piece) {
    List<String> likeness = new ArrayList<>();
    likeness.add(piece.pieces().isEmpty() ? piece.row().shown("stock") : piece.row().name());
    for (FilledRow cut : piece.pieces().isEmpty() ? piece.cuts() : List.<FilledRow>of()) {
      likeness.add(cut.shown("label"));
      likeness.add(cut.value("start").exact());
      likeness.add(cut.value("end").exact());
      likeness.add(cut.value("longer by").exact());
      likeness.add(cut.shown("flipped"));
    }
    return likeness;
  }

  private void print(FilledPlan plan, List<Piece> alike) {
    Piece first = alike.get(0);
    String names = alike.stream().map(p -> p.row().name()).collect(Collectors.joining("; "));
    String also = alike.size() == 1 ? "" : " (%d alike)".formatted(alike.size());
    wrapped("%s%s, from %s".formatted(names, also, first.row().shown("stock")));
    if (plan.isOfSticks()) {
      printStick(plan, alike);
    } else {
      printSheet(plan, first);
    }
    out.line();
  }

  private void printStick(FilledPlan plan, List<Piece> alike) {
    Piece stick = alike.get(0);
    boolean merged = stick.cuts().stream().anyMatch(CutsReport::isLonger);
    List<String> columns = withTurned("flipped", stick.cuts(), "start", "end", "length", "label");
    if (merged) {
      columns.add("longer by");
    }
    printRows("cut", stick.cuts(), columns);
    FilledRow row = stick.row();
    if (row.number("offcut").filter(left -> left.signum() > 0).isPresent()) {
      String left = row.shown("offcut");
      wrapped(
          row.isYes("kept")
              ? "offcut %s: keep it; label it %s".formatted(left, offcutNames(plan, alike))
              : "offcut %s: scrap".formatted(left));
    }
  }

  /** Of sticks that are cut alike, each offcut has a name of its own. */
  private String offcutNames(FilledPlan plan, List<Piece> alike) {
    return alike.stream()
        .map(stick -> '"' + OffcutName.of(filled, plan, stick.row()) + '"')
        .collect(Collectors.joining("; "));
  }

  /** Columns to print, and whether a part is turned where any is. */
  private static List<String> withTurned(String turned, List<FilledRow> rows, String... columns) {
    List<String> all = new ArrayList<>(List.of(columns));
    if (rows.stream().anyMatch(row -> row.isYes(turned))) {
      all.add(turned);
    }
    return all;
  }

  private static boolean isLonger(FilledRow cut) {
    return cut.number("longer by").filter(longer -> longer.signum() > 0).isPresent();
  }

  private void printSheet(FilledPlan plan, Piece sheet) {
    printRows(
        "cut",
        sheet.cuts(),
        List.of("direction", "cut at", "from panel edge", "panel width", "panel height"));
    List<FilledRow> pieces = sheet.pieces();
    printRows(
        "placement",
        pieces,
        withTurned("rotated", pieces, "width", "height", "left", "top", "label"));
    List<FilledRow> kept = sheet.offcuts().stream().filter(row -> row.isYes("kept")).toList();
    for (FilledRow offcut : kept) {
      wrapped(
          "offcut %s x %s: keep it; label it \"%s\""
              .formatted(
                  offcut.shown("width"),
                  offcut.shown("height"),
                  OffcutName.of(filled, plan, offcut)));
    }
  }

  private void printRows(String called, List<FilledRow> rows, List<String> columns) {
    List<TextTable.Column> headings = new ArrayList<>();
    headings.add(new TextTable.Column(called, false));
    columns.forEach(column -> headings.add(new TextTable.Column(column, false)));
    TextTable table = new TextTable(headings);
    for (FilledRow row : rows) {
      List<String> cells = new ArrayList<>();
      cells.add(row.name());
      columns.forEach(column -> cells.add(cell(row, column)));
      table.add(cells);
    }
    table.lines(PageReport.WIDTH - 4, Ink.ASIDE).forEach(text -> out.line(text.indented("    ")));
  }

  /** What is told in full is smaller than any mark of a tape. */
  private static String cell(FilledRow row, String column) {
    if (!column.equals("longer by")) {
      return row.shown(column);
    }
    FilledValue longer = row.value(column);
    return isLonger(row) ? longer.exact() + " " + longer.unit() : "";
  }

  private static List<String> toBuy(List<TakenStock> stock) {
    List<TakenStock> bought = stock.stream().filter(one -> one.toBuy() > 0).toList();
    List<String> lines = new ArrayList<>();
    bought.forEach(
        one ->
            lines.add("%d of %s, %s%s".formatted(one.toBuy(), one.name(), one.size(), price(one))));
    inAll(bought).ifPresent(lines::add);
    return lines;
  }

  /** What several prices come to; plans may keep small different things, which have no sum. */
  private static Optional<String> inAll(List<TakenStock> bought) {
    List<FilledValue> prices = bought.stream().flatMap(one -> one.price().stream()).toList();
    if (prices.size() < 2 || prices.stream().map(FilledValue::unit).distinct().count() > 1) {
      return Optional.empty();
    }
    String what = prices.size() == bought.size() ? "total" : "total of what has a price";
    return prices.stream()
        .reduce(FilledValue::plus)
        .map(sum -> "%s: %s".formatted(what, sum.shown().text()));
  }

  private static String price(TakenStock stock) {
    return stock.price().map(FilledValue::shown).map(shown -> ": " + shown.text()).orElse("");
  }

  private static List<String> stored(List<TakenStock> stock) {
    return stock.stream()
        .filter(one -> one.fromStock() > 0)
        .map(one -> "%d of %s, %s".formatted(one.fromStock(), one.name(), one.size()))
        .toList();
  }

  /** How to ask where a length comes from, by the first cut that has one. */
  private void printSource(List<FilledPlan> plans) {
    plans.stream()
        .filter(FilledPlan::isOfSticks)
        .flatMap(plan -> plan.materials().stream())
        .flatMap(material -> material.taken().stream())
        .flatMap(stick -> stick.cuts().stream())
        .findFirst()
        .map(
            cut ->
                "Where a length comes from: battenbook why JOB \"length of %s\""
                    .formatted(cut.name()))
        .ifPresent(hint -> heading(hint, Ink.ASIDE));
  }

  private void printList(String heading, Ink ink, List<String> items) {
    if (!items.isEmpty()) {
      heading(heading, ink);
      items.forEach(item -> wrapped("· " + item));
      out.line();
    }
  }

  private void heading(String text, Ink ink) {
    for (String part : WrappedText.lines(text, PageReport.WIDTH)) {
      out.line(ink, part);
    }
  }

  private void wrapped(String text) {
    String lead = "  ";
    for (String part : WrappedText.lines(text, PageReport.WIDTH - 4)) {
      out.line(lead + part);
      lead = "    ";
    }
  }
}
