package org.battenbook.workbook;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.battenbook.workbook.RandomExpressions.Function;
import org.battenbook.workbook.RandomExpressions.Where;
import org.battenbook.workbook.RandomExpressions.Written;
import org.battenbook.workbook.RandomPlace.Off;
import org.battenbook.workbook.RandomPlace.Sort;
import org.battenbook.workbook.RandomWorkbook.Feature;
import org.jspecify.annotations.Nullable;

/**
 * Writes the files of a {@link RandomWorkbook}, section by section. A place reads only what was
 * made before it, so that nothing is read in a circle.
 */
final class RandomSections {
  private static final List<String> TABLES =
      List.of("frames", "mats", "boards", "hooks", "walls", "lids", "crates", "panels", "labels");

  private static final List<String> FORMS =
      List.of("1/32 in", "0.1 mm", "ft", "0.01 in", "mm", "ft or 0.01 m");

  private static final Pattern DOTTED =
      Pattern.compile("(?<![\\w.])(?!above|this)[a-z]\\w*\\.[a-z]\\w*(\\.[a-z]\\w*)?");

  private static final int MOST_TABLES = 7;

  final List<RandomPlace> places = new ArrayList<>();
  final List<RandomTable> tables = new ArrayList<>();
  final List<Function> functions = new ArrayList<>();

  private final Random random;
  private final boolean hasPlan;
  private final int fileCount;
  private final List<FileText> files = new ArrayList<>();
  private final Set<Feature> features = EnumSet.noneOf(Feature.class);
  private final RandomExpressions expressions;

  /** The places that files before the one at hand changed. */
  private final Set<RandomPlace> changedBefore = new LinkedHashSet<>();

  /** The cells with formulas, as changes name them: a change cannot read those. */
  private final Set<String> formulaCells = new HashSet<>();

  /** What the job says of lines that its standards leave open. */
  private final StringBuilder filledByTheJob = new StringBuilder();

  private int order;

  /** Where the places of the file at hand begin. */
  private int fileStart;

  /** The text of one file. */
  private static final class FileText {
    final StringBuilder head = new StringBuilder();
    final StringBuilder body = new StringBuilder();
    final StringBuilder changes = new StringBuilder();
    final Set<String> changed = new HashSet<>();
    final Set<RandomPlace> changedPlaces = new LinkedHashSet<>();
    final String page;

    FileText(String page) {
      this.page = page;
    }

    @Override
    public String toString() {
      return "%s\npage %s\n%s\n%s".formatted(head, page, body, changes);
    }
  }

  RandomSections(Random random, boolean hasPlan) {
    this.random = random;
    this.hasPlan = hasPlan;
    this.expressions = new RandomExpressions(random, places, tables, functions, features);
    this.fileCount = one(8) ? 1 : 2 + random.nextInt(2);
    for (int file = 0; file < fileCount; file++) {
      file();
    }
  }

  List<String> files() {
    return files.stream().map(FileText::toString).toList();
  }

  Set<Feature> features() {
    return features;
  }

  /** Past all places. */
  int order() {
    return order;
  }

  static String fileName(int file, boolean isJob) {
    return isJob ? "job.batten" : "shop" + file + ".batten";
  }

  private FileText here() {
    return files.get(files.size() - 1);
  }

  private boolean inJob() {
    return files.size() == fileCount;
  }

  private void file() {
    int number = files.size();
    FileText file = new FileText("page" + number);
    files.add(file);
    fileStart = order;
    file.head.append("workbook \"File %d\"\n".formatted(number));
    if (number > 0) {
      file.head.append("follows \"%s\"\n".formatted(fileName(number - 1, false)));
    }
    if (inJob() && one(2)) {
      features.add(Feature.LENGTHS_IN);
      file.head.append("lengths in %s\n".formatted(of(List.of("1/16 in", "0.1 mm", "ft"))));
    }
    line(Sort.LENGTH);
    if (number == 0) {
      written();
    }
    for (int i = 0; i < 6 + random.nextInt(4); i++) {
      section();
    }
    if (inJob()) {
      finish(file);
    }
    change();
  }

  private void finish(FileText file) {
    if (hasPlan) {
      plan();
    }
    file.body.append(filledByTheJob);
  }

  private void section() {
    switch (random.nextInt(12)) {
      case 0, 1 -> written();
      case 2, 3, 4 -> opened();
      case 5, 11 -> function();
      case 6 -> here().body.append(rule("  ", Where.of(null, order)));
      case 7 -> columnOfAnotherFile();
      default -> line(sort());
    }
  }

  private Sort sort() {
    Sort sort =
        of(
            List.of(
                Sort.LENGTH,
                Sort.LENGTH,
                Sort.LENGTH,
                Sort.LENGTH,
                Sort.AREA,
                Sort.NUMBER,
                Sort.NUMBER,
                Sort.TEXT,
                Sort.TRUTH,
                Sort.DATE,
                Sort.ROW,
                Sort.ROW));
    return sort == Sort.ROW && withRows().isEmpty() ? Sort.LENGTH : sort;
  }

  private List<RandomTable> withRows() {
    return tables.stream().filter(table -> !table.rows.isEmpty()).toList();
  }

  private @Nullable RandomTable rowsOf(Sort sort) {
    return sort == Sort.ROW ? of(withRows()) : null;
  }

  private String fresh(Sort sort) {
    String word =
        switch (sort) {
          case LENGTH -> "len";
          case AREA -> "pane";
          case NUMBER -> "num";
          case COUNT -> "many";
          case TEXT -> "note";
          case TRUTH -> "fits";
          case DATE -> "due";
          case ROW -> "pick";
        };
    return word + order;
  }

  private void line(Sort sort) {
    String name = fresh(sort);
    if (sort == Sort.LENGTH && files.size() == 1 && fileCount > 1 && one(4)) {
      String literal = expressions.literal(sort);
      features.add(Feature.FILLED_BY_THE_JOB);
      here().body.append("  lines\n    %s : length\n".formatted(name));
      filledByTheJob.append("page page0\n  lines\n    %s = %s\n".formatted(name, literal));
      add(name, sort, null, null, true, Written.exact(literal), true);
      return;
    }
    RandomTable rows = rowsOf(sort);
    Written formula = formula(sort, rows, Where.of(null, order));
    here().body.append("  lines\n    %s = %s\n".formatted(name, formula.text()));
    add(name, sort, null, rows, false, formula, false);
  }

  private RandomPlace add(
      String name,
      Sort sort,
      @Nullable RandomTable table,
      @Nullable RandomTable rows,
      boolean given,
      Written formula,
      boolean fixed) {
    RandomPlace place =
        new RandomPlace(
            name, sort, table, rows, order++, given, formula.off(), formula.ways(), fixed);
    places.add(place);
    if (table != null) {
      table.columns.add(place);
    }
    note(formula.text());
    return place;
  }

  private void note(String formula) {
    Matcher dotted = DOTTED.matcher(formula);
    while (dotted.find()) {
      features.add(dotted.group(1) == null ? Feature.LOOK_UP : Feature.TWO_DOTS);
    }
  }

  /** The formula of a line or a worked-out column. */
  private Written formula(Sort sort, @Nullable RandomTable rows, Where where) {
    if (sort != Sort.ROW && where.table() == null && one(3)) {
      return ending(sort, Written.exact(expressions.literal(sort)));
    }
    if (sort == Sort.TEXT && one(2)) {
      return Written.exact(expressions.message(where));
    }
    return ending(sort, expressions.of(sort, rows, where, 1 + random.nextInt(2)));
  }

  /** What may stand behind a formula: a tolerance or a form. */
  private Written ending(Sort sort, Written formula) {
    if (sort == Sort.LENGTH && one(4)) {
      return tolerant(formula);
    }
    if (sort == Sort.LENGTH && one(5)) {
      features.add(Feature.SHOWN_AS);
      return formula.with("%s shown as %s".formatted(formula.text(), of(FORMS)));
    }
    return formula;
  }

  private Written tolerant(Written formula) {
    features.add(Feature.TOLERANCE);
    return new Written(
        "%s ± 1/%d in".formatted(formula.text(), 16 << random.nextInt(3)),
        formula.off().or(Off.LINEAR),
        formula.ways() + 1);
  }

  /** A formula without tolerances, for where none is expected. */
  private String exact(Sort sort, @Nullable RandomTable rows, Where where) {
    for (int i = 0; i < 9; i++) {
      Written some = expressions.of(sort, rows, where, 1);
      if (some.off() == Off.NOT) {
        note(some.text());
        return some.text();
      }
    }
    return rows == null ? expressions.literal(sort) : rowName(rows);
  }

  private String rowName(RandomTable rows) {
    return "\"%s\"".formatted(of(rows.rows));
  }

  private String literal(RandomPlace place) {
    return place.rows == null ? expressions.literal(place.sort) : rowName(place.rows);
  }

  private @Nullable RandomTable newTable(boolean isOpened) {
    List<String> free =
        TABLES.stream()
            .filter(name -> tables.stream().noneMatch(t -> t.name.equals(name)))
            .toList();
    return tables.size() < MOST_TABLES ? new RandomTable(of(free), here().page, isOpened) : null;
  }

  private void written() {
    RandomTable table = newTable(false);
    if (table == null) {
      return;
    }
    for (int row = 0; row < 2 + random.nextInt(3); row++) {
      table.rows.add("%s %d".formatted(table.one(), row + 1));
    }
    table.roots.add(table);
    add(table.key(), Sort.TEXT, table, null, true, Written.exact(""), true);
    tables.add(table);
    StringBuilder text = here().body;
    text.append(
        "  table %s by %s\n    given\n      %s : text\n"
            .formatted(table.name, table.key(), table.key()));
    givenColumn(table, Sort.LENGTH, one(3), text);
    givenColumn(table, Sort.COUNT, one(3), text);
    for (int i = 0; i < 1 + random.nextInt(3); i++) {
      givenColumn(table, sort(), one(3), text);
    }
    workedOut(table, text);
    rows(table, text);
  }

  private void givenColumn(RandomTable table, Sort sort, boolean hasDefault, StringBuilder text) {
    RandomTable rows = rowsOf(sort);
    String name = fresh(sort);
    boolean isOff = sort == Sort.LENGTH && one(3);
    Written none = isOff ? new Written("", Off.LINEAR, 1) : Written.exact("");
    String otherwise = "";
    if (hasDefault) {
      boolean literal = sort == Sort.COUNT || one(2);
      String some = rows == null ? expressions.literal(sort) : rowName(rows);
      otherwise = " = " + (literal ? some : exact(sort, rows, Where.of(table, order)));
    }
    RandomPlace column = add(name, sort, table, rows, true, none, sort == Sort.COUNT);
    if (hasDefault) {
      table.defaults.put(column, otherwise.substring(3));
    }
    text.append("      %s : %s%s\n".formatted(name, column.kind(), otherwise));
  }

  private void workedOut(RandomTable table, StringBuilder text) {
    text.append("    worked out\n");
    for (int i = 0; i < 2 + random.nextInt(3); i++) {
      workedOutColumn(table, i == 0 && one(2) ? Sort.COUNT : sort(), text);
    }
    if (one(3)) {
      text.append(rule("    ", Where.of(table, order)));
    }
  }

  private void workedOutColumn(RandomTable table, Sort sort, StringBuilder text) {
    String name = fresh(sort);
    RandomTable rows = rowsOf(sort);
    Where where = Where.of(table, order);
    Written formula =
        sort == Sort.LENGTH && one(5)
            ? expressions.running(name, Off.NOT, where, 1)
            : formula(sort, rows, where);
    text.append("      %s = %s\n".formatted(name, formula.text()));
    add(name, sort, table, rows, false, formula, false);
  }

  private String rule(String indent, Where where) {
    boolean requires = one(2);
    features.add(requires ? Feature.REQUIREMENT : Feature.CAUTION);
    String condition = expressions.truth(where, 2).text();
    String message = expressions.message(where);
    String form = requires ? "%srequire %s\n%s  else %s\n" : "%scaution when %s\n%s  say %s\n";
    return form.formatted(indent, condition, indent, message);
  }

  private void rows(RandomTable table, StringBuilder text) {
    List<RandomPlace> columns = new ArrayList<>(table.columns);
    columns.removeIf(c -> !c.given && !one(4));
    text.append("  rows of %s\n    ".formatted(table.name));
    text.append(columns.stream().map(c -> c.name).collect(Collectors.joining(" | "))).append('\n');
    for (String row : table.rows) {
      List<String> cells = new ArrayList<>();
      columns.forEach(
          c -> cells.add(c.name.equals(table.key()) ? "\"" + row + "\"" : cell(c, row)));
      text.append("    ").append(String.join(" | ", cells)).append('\n');
    }
  }

  private String cell(RandomPlace column, String row) {
    String cell = cell(column);
    if (cell.startsWith("(")) {
      formulaCells.add(column.said(row));
    }
    return cell;
  }

  private String cell(RandomPlace column) {
    RandomTable table = Objects.requireNonNull(column.table);
    String otherwise = table.defaults.get(column);
    if (column.sort == Sort.COUNT && column.given) {
      boolean empty = otherwise != null && one(2);
      String count = empty ? Objects.requireNonNull(otherwise) : expressions.literal(Sort.COUNT);
      table.counts.computeIfAbsent(column, c -> new ArrayList<>()).add(Integer.valueOf(count));
      return empty ? "" : count;
    }
    if (column.given ? otherwise != null && one(2) : !one(3)) {
      features.add(Feature.EMPTY_CELL);
      return "";
    }
    features.add(column.given ? Feature.EMPTY_CELL : Feature.FILLED_BY_HAND);
    if (one(6) && column.sort != Sort.COUNT) {
      features.add(Feature.FORMULA_IN_A_CELL);
      return "(%s)".formatted(exact(column.sort, column.rows, Where.of(table, column.order)));
    }
    if (column.sort == Sort.LENGTH && column.off != Off.NOT && one(2)) {
      features.add(Feature.TOLERANCE_OF_A_CELL);
      return literal(column) + " ± 1/64 in";
    }
    return literal(column);
  }

  private void opened() {
    RandomTable table = newTable(true);
    List<RandomTable> sources = new ArrayList<>(tables);
    if (table == null || sources.isEmpty()) {
      return;
    }
    RandomTable first = of(sources);
    sources.removeIf(t -> t.roots.stream().anyMatch(first.roots::contains));
    List<RandomTable> from =
        !sources.isEmpty() && one(2) ? List.of(first, of(sources)) : List.of(first);
    StringBuilder text = here().body;
    text.append("  table %s by %s\n".formatted(table.name, table.key()));
    features.add(Feature.OPENED);
    if (from.size() > 1) {
      features.add(Feature.OPENED_FROM_SEVERAL);
    }
    String size = "size" + order;
    boolean numbered = false;
    for (RandomTable source : from) {
      numbered |= opening(table, source, numbered, size, text);
    }
    add(table.key(), Sort.TEXT, table, null, true, Written.exact(""), true);
    if (from.size() == 1) {
      add(first.one(), Sort.ROW, table, first, true, Written.exact(""), true);
      if (numbered) {
        add("number", Sort.NUMBER, table, null, true, Written.exact(""), true);
      }
    }
    tables.add(table);
    text.append(
        "    given\n      %s : length = %s\n".formatted(size, expressions.literal(Sort.LENGTH)));
    add(size, Sort.LENGTH, table, null, true, Written.exact(""), false);
    givenColumn(table, sort(), true, text);
    givenColumn(table, Sort.COUNT, true, text);
    workedOut(table, text);
    fillIn(table, text);
  }

  /** Says whether its rows have numbers. */
  private boolean opening(
      RandomTable table, RandomTable source, boolean isNumbered, String size, StringBuilder text) {
    table.roots.addAll(source.roots);
    if (source.isOpened) {
      features.add(Feature.OPENED_FROM_OPENED);
    }
    List<RandomPlace> counts = source.columns.stream().filter(c -> c.sort == Sort.COUNT).toList();
    RandomPlace count = counts.isEmpty() || isNumbered || one(3) ? null : of(counts);
    text.append("    for each %s of %s".formatted(source.one(), source.name));
    text.append(count == null ? "\n" : ", number to %s\n".formatted(count.name));
    certainRows(table, source, count);
    List<RandomPlace> lengths =
        source.columns.stream().filter(c -> c.sort == Sort.LENGTH && c.off == Off.NOT).toList();
    if (!lengths.isEmpty()) {
      String more = count == null ? "" : " + number * 1 in";
      text.append("      %s = %s.%s%s\n".formatted(size, source.one(), of(lengths).name, more));
    }
    return count != null;
  }

  private void certainRows(RandomTable table, RandomTable source, @Nullable RandomPlace count) {
    if (count == null) {
      table.rows.addAll(source.rows);
      return;
    }
    if (!count.given) {
      features.add(Feature.OPENED_BY_WORKED_OUT_COUNT);
    }
    List<Integer> counts = source.counts.getOrDefault(count, List.of());
    for (int row = 0; row < counts.size(); row++) {
      String name = source.rows.get(row);
      int many = counts.get(row);
      for (int number = 1; number <= many; number++) {
        table.rows.add(many == 1 ? name : "%s: %d".formatted(name, number));
      }
    }
  }

  private void fillIn(RandomTable table, StringBuilder text) {
    List<RandomPlace> columns = new ArrayList<>(table.columns);
    columns.removeIf(c -> c.fixed || one(2));
    if (columns.isEmpty() || table.rows.isEmpty() || one(3)) {
      return;
    }
    features.add(Feature.FILLED_IN_ROW);
    text.append("  rows of %s\n    %s".formatted(table.name, table.key()));
    columns.forEach(c -> text.append(" | ").append(c.name));
    for (String row : table.rows.subList(0, 1 + random.nextInt(table.rows.size()))) {
      text.append("\n    \"%s\"".formatted(row));
      columns.forEach(c -> text.append(" | ").append(cell(c, row)));
    }
    text.append('\n');
  }

  private void function() {
    String name = "fn" + order;
    Where where = new Where(null, null, order, List.of("x", "y"), false);
    String line = "(" + expressions.literal(Sort.LENGTH) + ")";
    boolean scales = one(4);
    boolean isLinear = scales || one(2);
    String body =
        scales
            ? "x * y + x"
            : isLinear
                ? of(List.of("x + y - " + line, "if x > y then x - y else y", "x - y / 2 + x"))
                : expressions.of(Sort.LENGTH, null, where, 2).text();
    here().head.append("to find %s(x, y) = %s\n".formatted(name, body));
    functions.add(new Function(name, scales, isLinear, order++));
  }

  private void columnOfAnotherFile() {
    List<RandomTable> others = tables.stream().filter(t -> !t.page.equals(here().page)).toList();
    if (others.isEmpty()) {
      return;
    }
    features.add(Feature.COLUMN_OF_THE_JOB);
    RandomTable table = of(others);
    StringBuilder text = here().body;
    text.append("page %s\n  table %s\n    worked out\n".formatted(table.page, table.name));
    workedOutColumn(table, sort(), text);
    text.append("page %s\n".formatted(here().page));
  }

  private void change() {
    List<RandomPlace> open = new ArrayList<>();
    places.stream().filter(p -> p.order < fileStart && !p.fixed).forEach(open::add);
    for (int i = 0; i < 7 && !open.isEmpty(); i++) {
      boolean again = !changedBefore.isEmpty() && one(2);
      RandomPlace place = of(again ? List.copyOf(changedBefore) : open);
      RandomTable table = place.table;
      if (table != null && !table.rows.isEmpty() && one(2)) {
        changeCell(place, of(table.rows));
      } else {
        change(place);
      }
    }
    here().changedPlaces.forEach(changedBefore::add);
  }

  private void change(RandomPlace place) {
    if (!here().changed.add(place.said())) {
      return;
    }
    features.add(changedBefore.contains(place) ? Feature.CHANGE_IN_TWO_FILES : Feature.CHANGE);
    here().changedPlaces.add(place);
    Where where = Where.of(place.table, place.order);
    String formula = exact(place.sort, place.rows, where);
    if (one(2)) {
      features.add(Feature.CHANGE_WITH_OWN_NAME);
      formula = withOwnName(place, where);
    } else if (place.sort == Sort.COUNT) {
      formula = expressions.count(where).text();
    }
    if (place.sort == Sort.LENGTH && place.off != Off.NOT && one(2)) {
      formula += " ± 1/64 in";
    }
    write(place.said(), formula);
  }

  private String withOwnName(RandomPlace place, Where where) {
    String name = place.name;
    String some = expressions.truth(where, 1).text();
    String condition = some.contains("even at worst") ? "(3 in < 40 mm)" : some;
    String other = exact(place.sort, place.rows, where);
    return switch (place.sort) {
      case LENGTH ->
          of(
              List.of(
                  name + " + 1/16 in",
                  name + " + " + other,
                  "(%s rounded up to 1/8 in)".formatted(name),
                  "(if %s then %s else %s)".formatted(condition, other, name)));
      case AREA -> name + " + " + other;
      case NUMBER -> name + " + 1";
      case COUNT -> "min(%s + 1, 3)".formatted(name);
      case TEXT -> "\"{%s}, again\"".formatted(name);
      case TRUTH -> "(%s or not %s)".formatted(condition, name);
      case DATE -> name + " + 48 h";
      case ROW -> "(if %s then %s else %s)".formatted(condition, other, name);
    };
  }

  private void changeCell(RandomPlace place, String row) {
    String said = place.said(row);
    if (!here().changed.add(said)) {
      return;
    }
    features.add(Feature.CHANGE_OF_A_CELL);
    Where where = Where.of(place.table, place.order);
    boolean reads = place.off == Off.NOT && one(2) && !formulaCells.contains(said);
    formulaCells.add(said);
    write(said, reads ? withOwnName(place, where) : exact(place.sort, place.rows, where));
  }

  private void write(String said, String formula) {
    note(formula);
    here().changes.append("change %s = %s because \"it is so here\"\n".formatted(said, formula));
  }

  private void plan() {
    features.add(Feature.PLAN);
    List<RandomTable> sources =
        tables.stream()
            .filter(t -> t.columns.stream().anyMatch(c -> c.sort == Sort.COUNT))
            .toList();
    RandomTable source = of(sources);
    String count = of(source.columns.stream().filter(c -> c.sort == Sort.COUNT).toList()).name;
    here()
        .body
        .append(
            """
              table pieces by piece
                for each %1$s of %2$s, number to %3$s
                given
                  long   : length = %4$s
                  needed : count = %5$d
              table bars by bar
                given
                  bar  : text
                  size : length
              rows of bars
                bar     | size
                "short" | 60 in
                "long"  | 96 in
              stick plan rail
                parts of pieces
                  length   = long
                  quantity = needed
                stock of bars
                  length = size
              lines
                sticks = count of rail sticks
                cut    = sum of long * needed over pieces
                ends   = sum of length over rail cuts
            """
                .formatted(
                    source.one(),
                    source.name,
                    count,
                    expressions.literal(Sort.LENGTH),
                    1 + random.nextInt(3)));
  }

  private boolean one(int in) {
    return random.nextInt(in) == 0;
  }

  private <T> T of(List<T> some) {
    return some.get(random.nextInt(some.size()));
  }
}
