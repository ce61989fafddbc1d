package org.battenbook.book;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** By which tables the rows of one come from those of another: opened from them, or planned. */
final class RowPath {
  /**
   * One step of the way.
   *
   * @param words how the rows of the one table come from the other's
   */
  private record Step(Table from, String words) {}

  private final Table goal;
  private final Set<Table> seen = new HashSet<>();

  private RowPath(Table goal) {
    this.goal = goal;
  }

  /**
   * The way in words, such as {@code 'b' from 'a'}; empty where the rows do not come from there.
   */
  static Optional<String> between(Table start, Table goal) {
    return new RowPath(goal).from(start);
  }

  private Optional<String> from(Table table) {
    if (table == goal) {
      return Optional.of("");
    }
    if (!seen.add(table)) {
      return Optional.empty();
    }
    return steps(table).stream()
        .flatMap(step -> from(step.from()).map(rest -> step.words() + rest).stream())
        .findFirst();
  }

  private static List<Step> steps(Table table) {
    Stream<Step> opened =
        table.openings().stream()
            .map(o -> new Step(o.from(), ", '%s' from '%s'".formatted(table, o.from())));
    PlanStatement plan = table.plan();
    Stream<Step> planned =
        plan == null
            ? Stream.of()
            : Stream.of(plan.parts().table(), plan.stock().table())
                .map(t -> new Step(t, planned(table, plan, t)));
    return Stream.concat(opened, planned).toList();
  }

  private static String planned(Table table, PlanStatement plan, Table from) {
    return ", '%s' from '%s' by the plan '%s'".formatted(table, from, plan.name());
  }
}
