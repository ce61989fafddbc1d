package org.battenbook.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.battenbook.book.PlanRole;
import org.battenbook.book.PlanStatement;
import org.battenbook.evaluate.Results;
import org.battenbook.value.Value;

/**
 * The parts and the stock of one material, as rows of their tables.
 *
 * @param name what it is called
 */
record Material(String name, List<Integer> parts, List<Integer> stock) {
  /** All materials of the parts, in their order; a plan that names none has one. */
  static List<Material> of(PlanStatement plan, SourceRows parts, SourceRows stock) {
    Map<String, Material> materials = new LinkedHashMap<>();
    for (int row = 0; row < parts.count(); row++) {
      String name = name(plan, parts, row);
      materials
          .computeIfAbsent(name, n -> new Material(n, new ArrayList<>(), new ArrayList<>()))
          .parts()
          .add(row);
    }
    for (int row = 0; row < stock.count(); row++) {
      Material material = materials.get(name(plan, stock, row));
      if (material != null) {
        material.stock().add(row);
      }
    }
    return List.copyOf(materials.values());
  }

  /** How many materials parts are cut from. */
  static int count(PlanStatement plan, Results results) {
    SourceRows parts = new SourceRows(results, plan.parts());
    return Math.toIntExact(
        IntStream.range(0, parts.count())
            .mapToObj(row -> name(plan, parts, row))
            .distinct()
            .count());
  }

  /** A row whose material is unknown belongs with rows that name none. */
  private static String name(PlanStatement plan, SourceRows rows, int row) {
    try {
      return rows.says(PlanRole.MATERIAL)
          ? name(rows.value(row, PlanRole.MATERIAL))
          : plan.name().text();
    } catch (NotPlannable unknown) {
      return plan.name().text();
    }
  }

  private static String name(Value value) {
    return value instanceof Value.Row row ? row.name() : ((Value.Text) value).text();
  }
}
