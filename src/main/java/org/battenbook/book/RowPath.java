package org.battenbook.book;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Finds how the rows of one table come from those of another, through openings and plans: a path in
 * the graph of tables, found depth first.
 */
final class RowPath {
  /**
   * One step of a path.
   *
   * @param from the table that the rows come from
   * @param words the step for people, with a comma before it
   */
  private record Step(Table from, String words) {}

  private final Table goal;
  private final Set<Table> seen = new HashSet<>();

  private RowPath(Table goal) {
    this.goal = goal;
  }

  /**
   * The path for people, such as {@code , 'b' from 'a'}; empty if no rows of {@code start} come
   * from {@code goal}.
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
