package org.battenbook.derive;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.battenbook.bind.Spot;
import org.battenbook.book.Column;
import org.battenbook.book.Place;
import org.battenbook.check.CheckedBook;
import org.battenbook.check.CheckedPlace;
import org.battenbook.check.Need;
import org.battenbook.evaluate.Results;
import org.battenbook.evaluate.Trace;

/** Finds the values that depend on one value, near and far. */
public final class Feeds {
  private final Results results;
  private final CheckedBook book;
  private final Map<Place, List<User>> users = new HashMap<>();

  private record User(Place place, Need.Reach reach) {}

  /**
   * A place that is fed.
   *
   * @param rows which of its rows, counted from 0; only 0 for a line
   * @param isDirect whether its own formula reads the value asked for
   */
  public record Fed(Place place, Set<Integer> rows, boolean isDirect) {}

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
  }

  /** Everything that one value feeds, the nearest first. */
  public static List<Fed> of(Results results, Spot spot) {
    return new Feeds(results).find(spot);
  }

  private List<Fed> find(Spot start) {
    Map<Place, Set<Integer>> fed = new LinkedHashMap<>();
    Set<Spot> direct = users(start);
    Deque<Spot> open = new ArrayDeque<>(direct);
    Set<Spot> seen = new LinkedHashSet<>(direct);
    while (!open.isEmpty()) {
      Spot spot = open.removeFirst();
      fed.computeIfAbsent(spot.place(), p -> new TreeSet<>()).add(spot.row());
      for (Spot user : users(spot)) {
        if (seen.add(user)) {
          open.addLast(user);
        }
      }
    }
    Set<Place> near = new LinkedHashSet<>();
    direct.forEach(spot -> near.add(spot.place()));
    List<Fed> result = new ArrayList<>();
    fed.forEach((place, rows) -> result.add(new Fed(place, rows, near.contains(place))));
    return result;
  }

  private Set<Spot> users(Spot spot) {
    Set<Spot> found = new LinkedHashSet<>();
    for (User user : users.getOrDefault(spot.place(), List.of())) {
      if (!(user.place() instanceof Column column)) {
        found.add(new Spot(user.place(), 0));
      } else if (user.reach() == Need.Reach.SAME_ROW) {
        addIfReads(new Spot(column, spot.row()), spot, found);
      } else if (user.reach() == Need.Reach.ROW_ABOVE) {
        if (spot.row() + 1 < column.table().rowCount()) {
          addIfReads(new Spot(column, spot.row() + 1), spot, found);
        }
      } else {
        for (int row = 0; row < column.table().rowCount(); row++) {
          addIfReads(new Spot(column, row), spot, found);
        }
      }
    }
    return found;
  }

  /** A row reads only what the branch taken, the row looked up, and the rows that count need. */
  private void addIfReads(Spot user, Spot read, Set<Spot> found) {
    Trace trace = Trace.of(results, user);
    if (trace == null) {
      return;
    }
    Reads reads = Reads.of(results, trace, user.row());
    if (reads.spots().contains(read) || reads.rowsLeftOut() > 0) {
      found.add(user);
    }
  }
}
