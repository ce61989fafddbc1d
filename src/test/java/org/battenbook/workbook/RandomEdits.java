package org.battenbook.workbook;

import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import org.battenbook.workbook.RandomExpressions.Where;
import org.battenbook.workbook.RandomPlace.Sort;
import org.battenbook.workbook.RandomWorkbook.Candidate;
import org.battenbook.workbook.RandomWorkbook.Feature;
import org.jspecify.annotations.Nullable;

/** Edits that a person might make to a {@link RandomWorkbook}. */
final class RandomEdits {
  private static final List<String> WRONG =
      List.of("3 lb", "no such name", "\"words\"", "4 in +", "2 in^2", "true", "-1");

  private final RandomSections sections;
  private final Random random;
  private final RandomExpressions expressions;

  RandomEdits(RandomSections sections, Random random) {
    this.sections = sections;
    this.random = random;
    this.expressions =
        new RandomExpressions(
            random,
            sections.places,
            sections.tables,
            sections.functions,
            EnumSet.noneOf(Feature.class));
  }

  Candidate edit() {
    RandomPlace place = of(sections.places);
    RandomTable table = place.table;
    String row =
        table == null || table.rows.isEmpty() || random.nextInt(4) == 0 ? null : of(table.rows);
    return new Candidate(place.name, table == null ? "" : table.name, row, text(place, row));
  }

  private String text(RandomPlace place, @Nullable String row) {
    if (random.nextInt(8) == 0) {
      return of(WRONG);
    }
    if (row != null && random.nextInt(6) == 0) {
      return "";
    }
    if (row != null && random.nextInt(3) > 0) {
      return literal(place);
    }
    Where where = Where.of(place.table, place.order);
    return expressions.of(place.sort, place.rows, where, 2).text();
  }

  private String literal(RandomPlace place) {
    if (place.rows != null) {
      return place.rows.rows.isEmpty() ? "" : "\"%s\"".formatted(of(place.rows.rows));
    }
    return expressions.literal(place.sort == Sort.COUNT ? Sort.COUNT : place.sort);
  }

  private <T> T of(List<T> some) {
    return some.get(random.nextInt(some.size()));
  }
}
