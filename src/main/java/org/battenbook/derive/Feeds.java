package org.battenbook.derive;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.battenbook.bind.Spot;
import org.battenbook.book.Column;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.check.CheckedBook;
import org.battenbook.check.CheckedPlace;
import org.battenbook.check.Need;
import org.battenbook.evaluate.ReadLog;
import org.battenbook.evaluate.Results;
import org.battenbook.evaluate.Trace;
import org.battenbook.source.Span;
import org.battenbook.unit.Shown;

/** Finds the values, and the rows of tables, that depend on one value, near and far. */
public final class Feeds {
  private final Results results;
  private final CheckedBook book;
  private final Map<Place, List<User>> users = new HashMap<>();

  /** The tables whose rows a place, or the rows of another table, decide. */
  private final Map<Object, Set<Table>> opens = new HashMap<>();

  /** Who reads a value, of the places that {@link #indexed} holds. */
  private final Map<Node, Set<Spot>> readers = new HashMap<>();

  private final Set<Place> indexed = new HashSet<>();

  private record User(Place place, Need.Reach reach) {}

  /** A value, or which rows a table has. */
  private sealed interface Node {
    record Value(Spot spot) implements Node {}

    record RowsOf(Table table) implements Node {}
  }

  /** What is fed. */
  public sealed interface Fed {
    /** Whether it reads the value asked for itself. */
    boolean isDirect();

    /**
     * A line or a column.
     *
     * @param rows which of its rows, counted from 0; only 0 for a line
     */
    record Values(Place place, Set<Integer> rows, boolean isDirect) implements Fed {}

    /**
     * Which rows a table has.
     *
     * @param count how many
     */
    record Rows(Table table, int count, boolean isDirect) implements Fed {
      /** As people say it. */
      public String words() {
        return Why.rowsOf(table);
      }

      /** How many, as people read it. */
      public Shown shown() {
        return new Shown(Why.inRows(count), false);
      }

      /** How they come about, in words; empty where people wrote them. */
      public String opening() {
        return RowSources.of(table).words();
      }

      /** The statement that brings them. */
      public Span at() {
        return RowSources.of(table).at();
      }
    }
  }

  private Feeds(Results results) {
    this.results = results;
    this.book = results.program().book();
    for (CheckedPlace checked : book.places()) {
      for (Need need : checked.needs()) {
        users
            .computeIfAbsent(need.place(), p -> new ArrayList<>())
            .add(new User(checked.place(), need.reach()));
      }
    }
    for (Table table : book.book().tables()) {
      RowSources sources = RowSources.of(table);
      sources.places().forEach(place -> opens(place).add(table));
      sources.tables().forEach(from -> opens(from).add(table));
    }
  }

  private Set<Table> opens(Object decides) {
    return opens.computeIfAbsent(decides, p -> new LinkedHashSet<>());
  }

  /** Everything that one value feeds, the nearest first. */
  public static List<Fed> of(Results results, Spot spot) {
    return new Feeds(results).find(new Node.Value(spot));
  }

  private List<Fed> find(Node start) {
    Set<Node> direct = users(start);
    Deque<Node> open = new ArrayDeque<>(direct);
    Set<Node> seen = new LinkedHashSet<>(direct);
    while (!open.isEmpty()) {
      for (Node user : users(open.removeFirst())) {
        if (seen.add(user)) {
          open.addLast(user);
        }
      }
    }
    return told(seen, direct);
  }

  /** Place by place; cells that a plan wrote are part of its rows. */
  private List<Fed> told(Set<Node> seen, Set<Node> direct) {
    Map<Object, Set<Integer>> fed = new LinkedHashMap<>();
    Set<Object> near = new HashSet<>();
    for (Node node : seen) {
      if (node instanceof Node.Value value && isPlanned(value.spot())) {
        continue;
      }
      Object key = key(node);
      Set<Integer> rows = fed.computeIfAbsent(key, k -> new TreeSet<>());
      if (node instanceof Node.Value value) {
        rows.add(value.spot().row());
      }
      if (direct.contains(node)) {
        near.add(key);
      }
    }
    List<Fed> result = new ArrayList<>();
    fed.forEach(
        (key, rows) ->
            result.add(
                key instanceof Table table
                    ? new Fed.Rows(table, results.rows(table).count(), near.contains(key))
                    : new Fed.Values((Place) key, rows, near.contains(key))));
    return result;
  }

  private static Object key(Node node) {
    return node instanceof Node.Value value ? value.spot().place() : ((Node.RowsOf) node).table();
  }

  private Set<Node> users(Node node) {
    Set<Node> found = new LinkedHashSet<>();
    if (node instanceof Node.Value value) {
      opens(value.spot().place()).forEach(table -> found.add(new Node.RowsOf(table)));
      readers(value.spot()).forEach(spot -> found.add(new Node.Value(spot)));
    } else {
      ofRows(((Node.RowsOf) node).table(), found);
    }
    return found;
  }

  /** What depends on which rows a table has. */
  private void ofRows(Table table, Set<Node> found) {
    opens(table).forEach(opened -> found.add(new Node.RowsOf(opened)));
    if (table.plan() != null) {
      table.columns().stream()
          .flatMap(results::spots)
          .filter(this::isPlanned)
          .forEach(spot -> found.add(new Node.Value(spot)));
    }
    users.getOrDefault(keyColumn(table), List.of()).stream()
        .filter(user -> user.reach() == Need.Reach.ROWS)
        .forEach(user -> index(user.place()));
    readers
        .getOrDefault(new Node.RowsOf(table), Set.of())
        .forEach(spot -> found.add(new Node.Value(spot)));
  }

  private boolean isPlanned(Spot spot) {
    return Why.isPlanned(results.decisions(), spot);
  }

  private Set<Spot> readers(Spot spot) {
    Set<Spot> found = new LinkedHashSet<>();
    for (User user : users.getOrDefault(spot.place(), List.of())) {
      switch (user.reach()) {
        case SAME_ROW -> addIfReads(new Spot(user.place(), spot.row()), spot, found);
        case ROW_ABOVE -> addIfReads(new Spot(user.place(), spot.row() + 1), spot, found);
        case WHOLE -> index(user.place());
        case ROWS -> {}
      }
    }
    found.addAll(readers.getOrDefault(new Node.Value(spot), Set.of()));
    return found;
  }

  /** A row reads only what the branch taken, the row looked up, and the rows that count need. */
  private void addIfReads(Spot user, Spot read, Set<Spot> found) {
    Table table = user.place().table();
    boolean isThere = table == null || user.row() < results.rows(table).count();
    Trace trace = isThere ? Trace.reading(results, user) : null;
    if (trace != null && trace.reads().all().contains(read)) {
      found.add(user);
    }
  }

  /** Notes what each row of a place reads, once. */
  private void index(Place place) {
    if (indexed.add(place)) {
      results.spots(place).forEach(this::index);
    }
  }

  private void index(Spot user) {
    Trace trace = Trace.reading(results, user);
    if (trace != null) {
      ReadLog reads = trace.reads();
      reads.all().forEach(spot -> addReader(new Node.Value(spot), user));
      reads.allTables().forEach(table -> addReader(new Node.RowsOf(table), user));
    }
  }

  private void addReader(Node read, Spot user) {
    readers.computeIfAbsent(read, r -> new LinkedHashSet<>()).add(user);
  }

  private static Column keyColumn(Table table) {
    return Objects.requireNonNull(table.keyColumn());
  }
}
