package org.battenbook.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.battenbook.workbook.RandomPlace.Off;
import org.battenbook.workbook.RandomPlace.Sort;
import org.battenbook.workbook.RandomWorkbook.Feature;
import org.jspecify.annotations.Nullable;

/** Formulas of a {@link RandomWorkbook}, of a wanted kind, out of what stands where they stand. */
final class RandomExpressions {
  private static final List<String> WOODS = List.of("\"ash\"", "\"oak\"", "\"red cedar\"");
  private static final List<String> STEPS = List.of("1/16 in", "1/8 in", "1 mm", "1/2 in");

  private final Random random;
  private final List<RandomPlace> places;
  private final List<RandomTable> tables;
  private final List<Function> functions;
  private final Set<Feature> features;

  /** A function of the workbook's own, of two lengths or a length and a number. */
  record Function(String name, boolean scales, boolean isLinear, int order) {}

  /**
   * A formula.
   *
   * @param ways how many ways errors come into it, at most
   */
  record Written(String text, Off off, int ways) {
    static Written exact(String text) {
      return new Written(text, Off.NOT, 0);
    }

    Written with(String other) {
      return new Written(other, off, ways);
    }
  }

  /**
   * Where a formula stands.
   *
   * @param table whose row it reads; absent outside of tables
   * @param outer the table around a total
   * @param bound it reads only what came before
   * @param parameters the lengths that a function calls by these names
   * @param inTotal whether it runs over the rows of a total
   */
  record Where(
      @Nullable RandomTable table,
      @Nullable RandomTable outer,
      int bound,
      List<String> parameters,
      boolean inTotal) {
    static Where of(@Nullable RandomTable table, int bound) {
      return new Where(table, null, bound, List.of(), false);
    }

    Where inside(RandomTable inner) {
      return new Where(inner, table, bound, parameters, true);
    }
  }

  RandomExpressions(
      Random random,
      List<RandomPlace> places,
      List<RandomTable> tables,
      List<Function> functions,
      Set<Feature> features) {
    this.random = random;
    this.places = places;
    this.tables = tables;
    this.functions = functions;
    this.features = features;
  }

  /** A formula of a kind; for rows, of a table. */
  Written of(Sort sort, @Nullable RandomTable rows, Where where, int depth) {
    return switch (sort) {
      case LENGTH -> length(where, depth);
      case AREA -> area(where, depth);
      case NUMBER -> number(where, depth);
      case COUNT -> count(where);
      case TEXT -> text(where, depth);
      case TRUTH -> truth(where, depth);
      case DATE -> date(where, depth);
      case ROW -> row(Objects.requireNonNull(rows), where, depth);
    };
  }

  /** A literal of a kind, as a cell has it. */
  String literal(Sort sort) {
    return switch (sort) {
      case LENGTH -> lengthLiteral();
      case AREA -> (1 + random.nextInt(90)) + " in^2";
      case NUMBER -> (1 + random.nextInt(12)) + (one(3) ? "/4" : "");
      case COUNT -> String.valueOf(random.nextInt(4));
      case TEXT -> of(WOODS);
      case TRUTH -> String.valueOf(random.nextBoolean());
      case DATE -> "2026-0%d-%d".formatted(1 + random.nextInt(9), 10 + random.nextInt(18));
      case ROW -> throw new IllegalArgumentException("rows are called by their names");
    };
  }

  private String lengthLiteral() {
    int whole = 1 + random.nextInt(30);
    return switch (random.nextInt(5)) {
      case 0 -> whole * 10 + " mm";
      case 1 -> "%d %d/16 in".formatted(whole, 1 + 2 * random.nextInt(8));
      case 2 -> "%d ft %d in".formatted(1 + whole / 8, whole % 12);
      case 3 -> whole + ".5 mm";
      default -> whole + " in";
    };
  }

  private Written length(Where where, int depth) {
    if (depth <= 0) {
      return leaf(Sort.LENGTH, null, where);
    }
    Supplier<Written> next = () -> length(where, depth - 1);
    return switch (random.nextInt(16)) {
      case 0, 1 -> linear("(%s + %s)", next.get(), next.get());
      case 2 -> linear("(%s - %s)", next.get(), next.get());
      case 3 -> scaled("(%s * %s)", next.get(), 2 + random.nextInt(3));
      case 4 -> scaled("(%s / %s)", next.get(), 2 + random.nextInt(3));
      case 5 -> through(one(2) ? "min(%s, %s)" : "max(%s, %s)", next.get(), next.get());
      case 6 -> rounded(next.get());
      case 7 -> choice(where, depth, next);
      case 8 -> total(Sort.LENGTH, where, depth);
      case 9 -> call(where, depth);
      case 10 -> above(where, depth);
      case 11 -> product(number(where, depth - 1), next.get());
      default -> leaf(Sort.LENGTH, null, where);
    };
  }

  private Written area(Where where, int depth) {
    if (depth <= 0) {
      return leaf(Sort.AREA, null, where);
    }
    Supplier<Written> next = () -> area(where, depth - 1);
    return switch (random.nextInt(7)) {
      case 0, 1, 2 -> product(length(where, depth - 1), length(where, depth - 1));
      case 3 -> linear("(%s + %s)", next.get(), next.get());
      case 4 -> choice(where, depth, next);
      case 5 -> total(Sort.AREA, where, depth);
      default -> leaf(Sort.AREA, null, where);
    };
  }

  private Written number(Where where, int depth) {
    if (depth <= 0) {
      return leaf(Sort.NUMBER, null, where);
    }
    Supplier<Written> next = () -> number(where, depth - 1);
    return switch (random.nextInt(9)) {
      case 0 -> linear("(%s + %s)", next.get(), next.get());
      case 1 -> scaled("(%s * %s)", next.get(), 2);
      case 2 -> {
        Written length = length(where, depth - 1);
        yield length.with("(%s / (%s))".formatted(length.text(), lengthLiteral()));
      }
      case 3 -> choice(where, depth, next);
      case 4 -> total(Sort.NUMBER, where, depth);
      case 5, 6 -> counted(where, depth);
      default -> leaf(Sort.NUMBER, null, where);
    };
  }

  /** A small count, be it of rows to open. */
  Written count(Where where) {
    Written some = leaf(Sort.COUNT, null, where);
    return switch (random.nextInt(4)) {
      case 0 -> some;
      case 1 -> Written.exact("(if %s then 1 else 2)".formatted(truth(where, 1).text()));
      case 2 ->
          Written.exact("(if %s then %s else 1)".formatted(truth(where, 1).text(), some.text()));
      default -> {
        Written counted = counted(where, 1);
        yield Written.exact("min(%s, 2)".formatted(counted.text()));
      }
    };
  }

  private Written text(Where where, int depth) {
    return depth > 0 && one(3)
        ? choice(where, depth, () -> text(where, depth - 1))
        : leaf(Sort.TEXT, null, where);
  }

  /** A text with holes. */
  String message(Where where) {
    StringBuilder text = new StringBuilder("\"It is ");
    for (int i = 0; i <= random.nextInt(2); i++) {
      List<Written> read = reads(p -> true, where);
      if (!read.isEmpty()) {
        text.append('{').append(of(read).text()).append("} ");
      }
      List<Written> lengths = reads(p -> p.sort == Sort.LENGTH, where);
      if (!lengths.isEmpty()) {
        text.append("beside {").append(of(lengths).text()).append(" shown as 0.1 mm} ");
      }
    }
    return text.append("so far.\"").toString();
  }

  private Written date(Where where, int depth) {
    if (depth > 0 && one(3)) {
      return choice(where, depth, () -> date(where, depth - 1));
    }
    Written leaf = leaf(Sort.DATE, null, where);
    return one(3) ? leaf.with("(%s + %d h)".formatted(leaf.text(), 24 * random.nextInt(9))) : leaf;
  }

  private Written row(RandomTable rows, Where where, int depth) {
    List<Written> read = reads(p -> p.rows == rows, where);
    if (depth > 0 && !read.isEmpty() && one(3)) {
      return choice(where, depth, () -> row(rows, where, depth - 1));
    }
    return !read.isEmpty() && one(2) ? of(read) : selection(rows, where);
  }

  private Written selection(RandomTable rows, Where where) {
    List<Written> lengths =
        reads(p -> p.table == rows && p.sort == Sort.LENGTH, where.inside(rows)).stream()
            .filter(w -> !w.text().startsWith("this"))
            .toList();
    features.add(Feature.SELECTION);
    if (lengths.isEmpty() || one(4)) {
      String called = rows.rows.isEmpty() ? "none of these" : of(rows.rows);
      return Written.exact(
          "(row of %s where %s = \"%s\")".formatted(rows.name, rows.key(), called));
    }
    String which = one(2) ? "smallest" : "largest";
    String fits = one(8) ? " where " + truth(where.inside(rows), 1).text() : "";
    return Written.exact(
        "(row of %s%s with %s %s)".formatted(rows.name, fits, which, of(lengths).text()));
  }

  Written truth(Where where, int depth) {
    int deeper = Math.max(0, depth - 1);
    return switch (random.nextInt(9)) {
      case 0 ->
          Written.exact(
              "(%s and %s)".formatted(truth(where, deeper).text(), truth(where, deeper).text()));
      case 1 -> Written.exact("(not %s)".formatted(truth(where, deeper).text()));
      case 2 -> leaf(Sort.TRUTH, null, where);
      case 3 ->
          Written.exact("(%s = %s)".formatted(leaf(Sort.TEXT, null, where).text(), of(WOODS)));
      case 4 ->
          Written.exact("(%s < %s)".formatted(number(where, deeper).text(), literal(Sort.NUMBER)));
      case 5 ->
          Written.exact(
              "(%s >= %s)".formatted(leaf(Sort.DATE, null, where).text(), literal(Sort.DATE)));
      case 6 -> atWorst(where);
      default -> {
        String relation = of(List.of("<", "<=", ">", ">="));
        yield Written.exact(
            "(%s %s %s)"
                .formatted(length(where, deeper).text(), relation, length(where, deeper).text()));
      }
    };
  }

  /** A comparison that is to hold even at worst, of what errors go through. */
  private Written atWorst(Where where) {
    List<Written> some =
        where.inTotal() || !where.parameters().isEmpty()
            ? List.of()
            : reads(p -> p.sort == Sort.LENGTH && p.off != Off.OTHERWISE && p.ways < 20, where);
    if (some.isEmpty()) {
      return Written.exact("(%s < %s)".formatted(length(where, 0).text(), lengthLiteral()));
    }
    features.add(Feature.AT_WORST);
    return Written.exact(
        "(%s - %s <= %s even at worst)"
            .formatted(of(some).text(), of(some).text(), lengthLiteral()));
  }

  private Written choice(Where where, int depth, Supplier<Written> next) {
    String condition = truth(where, depth - 1).text();
    Written chosen = linear("(if " + condition + " then %s else %s)", next.get(), next.get());
    return condition.contains("even at worst") ? off(chosen) : chosen;
  }

  private Written rounded(Written of) {
    features.add(Feature.ROUNDING);
    String how = of(List.of("up to", "down to", "to", "evenly to"));
    return Written.exact("(%s rounded %s %s)".formatted(of.text(), how, of(STEPS)));
  }

  private Written above(Where where, int depth) {
    List<RandomPlace> columns =
        where.table() == null || where.inTotal()
            ? List.of()
            : where.table().columns.stream()
                .filter(c -> c.sort == Sort.LENGTH && c.order < where.bound())
                .toList();
    if (columns.isEmpty()) {
      return leaf(Sort.LENGTH, null, where);
    }
    RandomPlace column = of(columns);
    return running(column.name, column.off, where, depth);
  }

  /** What goes on from row to row in a column. */
  Written running(String column, Off off, Where where, int depth) {
    features.add(Feature.ROW_ABOVE);
    Written first = length(where, depth - 1);
    Written more = length(where, depth - 1);
    Off all = first.off().or(more.off()).or(off);
    return new Written(
        "(if first row then %s else above.%s + %s)".formatted(first.text(), column, more.text()),
        all == Off.NOT ? Off.NOT : Off.OTHERWISE,
        0);
  }

  private Written call(Where where, int depth) {
    List<Function> seen = functions.stream().filter(f -> f.order() < where.bound()).toList();
    if (seen.isEmpty()) {
      return leaf(Sort.LENGTH, null, where);
    }
    features.add(Feature.FUNCTION);
    Function function = of(seen);
    Written first = length(where, depth - 1);
    Written second =
        function.scales()
            ? Written.exact(String.valueOf(2 + random.nextInt(3)))
            : length(where, depth - 1);
    String call = function.name() + "(%s, %s)";
    Written both = linear(call, first, second);
    return function.isLinear() ? new Written(both.text(), both.off(), 3 * both.ways()) : off(both);
  }

  private Written total(Sort sort, Where where, int depth) {
    RandomTable over = over(where);
    if (over == null) {
      return leaf(sort, null, where);
    }
    features.add(where.inTotal() ? Feature.NESTED_TOTAL : Feature.TOTAL);
    Where inside = where.inside(over);
    boolean some = !over.rows.isEmpty() && one(3);
    String what = some ? of(List.of("largest", "smallest", "average")) : "sum";
    boolean nested = !where.inTotal() && one(3);
    Written of =
        nested ? total(sort, inside, depth) : of(sort, null, inside, one(2) ? depth - 1 : 0);
    String fits = some ? "" : fits(inside, depth);
    return off(of.with("(%s of %s over %s%s)".formatted(what, of.text(), over.name, fits)));
  }

  private Written counted(Where where, int depth) {
    RandomTable over = over(where);
    if (over == null) {
      return leaf(Sort.NUMBER, null, where);
    }
    features.add(where.inTotal() ? Feature.NESTED_TOTAL : Feature.TOTAL);
    return Written.exact("(count of %s%s)".formatted(over.name, fits(where.inside(over), depth)));
  }

  private @Nullable RandomTable over(Where where) {
    List<RandomTable> some =
        tables.stream().filter(t -> t.columns.get(0).order < where.bound()).toList();
    return some.isEmpty() ? null : of(some);
  }

  /** Which rows count: by what the row around says, or by anything. */
  private String fits(Where inside, int depth) {
    List<String> groups = new ArrayList<>();
    RandomTable outer = inside.outer();
    if (outer != null) {
      for (RandomPlace inner : columns(inside.table(), inside.bound())) {
        if (inner.rows == outer) {
          groups.add("%s = this".formatted(inner.name));
        }
        for (RandomPlace other : columns(outer, inside.bound())) {
          boolean same = inner.sort.read() == other.sort.read() && inner.rows == other.rows;
          if (same && inner.sort != Sort.TRUTH) {
            groups.add("%s = this.%s".formatted(inner.name, other.name));
          }
        }
      }
    }
    if (!groups.isEmpty() && one(2)) {
      features.add(Feature.GROUP);
      String further = one(3) ? " and " + truth(inside, 0).text() : "";
      return " where " + of(groups) + further;
    }
    if (one(2)) {
      features.add(Feature.WHERE);
      return " where " + truth(inside, depth - 1).text();
    }
    return "";
  }

  private static List<RandomPlace> columns(@Nullable RandomTable table, int bound) {
    return table == null ? List.of() : table.columns.stream().filter(c -> c.order < bound).toList();
  }

  private Written leaf(Sort sort, @Nullable RandomTable rows, Where where) {
    List<Written> read =
        reads(
            p ->
                (sort == Sort.COUNT ? p.sort == Sort.COUNT : p.sort.read() == sort)
                    && p.rows == rows,
            where);
    if (sort == Sort.LENGTH && !where.parameters().isEmpty()) {
      return new Written(of(where.parameters()), Off.LINEAR, 1);
    }
    return read.isEmpty() || one(6) ? Written.exact("(" + literal(sort) + ")") : of(read);
  }

  /** Every way to read a place of some kind from where a formula stands. */
  List<Written> reads(Predicate<RandomPlace> wanted, Where where) {
    List<Written> ways = new ArrayList<>();
    for (RandomPlace place : places) {
      boolean there = place.order < where.bound();
      if (there && place.table == null) {
        add("", place, wanted, where, 2, ways);
      } else if (there && place.table == where.table()) {
        add("", place, wanted, where, 2, ways);
      } else if (there && place.table == where.outer()) {
        add("this.", place, wanted, where, 1, ways);
      }
    }
    return ways;
  }

  private void add(
      String before,
      RandomPlace place,
      Predicate<RandomPlace> wanted,
      Where where,
      int dots,
      List<Written> ways) {
    String text = before + place.name;
    if (wanted.test(place)) {
      boolean here = before.isEmpty() || place.off == Off.NOT;
      ways.add(new Written(text, here ? place.off : Off.OTHERWISE, place.ways + 1));
    }
    if (place.rows != null && dots > 0) {
      for (RandomPlace column : columns(place.rows, where.bound())) {
        add(text + ".", column, wanted, where, dots - 1, ways);
      }
    }
  }

  private Written scaled(String form, Written of, int by) {
    return of.with(form.formatted(of.text(), by));
  }

  private static Written product(Written left, Written right) {
    return through("(%s * %s)", left, right);
  }

  private static Written linear(String form, Written left, Written right) {
    return new Written(
        form.formatted(left.text(), right.text()),
        left.off().or(right.off()),
        left.ways() + right.ways());
  }

  private static Written through(String form, Written left, Written right) {
    return off(linear(form, left, right));
  }

  private static Written off(Written of) {
    return of.off() == Off.NOT ? of : new Written(of.text(), Off.OTHERWISE, 0);
  }

  boolean one(int in) {
    return random.nextInt(in) == 0;
  }

  <T> T of(List<T> some) {
    return some.get(random.nextInt(some.size()));
  }
}
