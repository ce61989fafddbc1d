package org.battenbook.cutting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.battenbook.book.PlanRole;
import org.battenbook.number.Rational;
import org.battenbook.plan.stick.MatchedSet;
import org.battenbook.plan.stick.Part;
import org.battenbook.plan.stick.SawStop;
import org.battenbook.plan.stick.SawStops;
import org.battenbook.plan.stick.StickJob;
import org.battenbook.plan.stick.StickRules;
import org.battenbook.value.Value;

/** The parts of one material, as they are cut: each at the length of its stop. */
final class StickParts {
  private final SourceRows rows;
  private final Remarks remarks;
  private final StickRules rules;
  private final Map<String, SawStop> stopOf = new HashMap<>();
  private final List<Part> loose = new ArrayList<>();
  private final List<MatchedSet> sets = new ArrayList<>();

  /** What is asked for of one row. */
  private record Asked(int row, Part part) {}

  /**
   * Reads the parts of a material; those that cannot be planned are remarked on.
   *
   * @param tolerance within which stops are merged
   * @param draft takes the remarks, the stops, and what people call the parts
   */
  StickParts(SourceRows rows, Material material, Rational tolerance, OrderReader.Draft draft)
      throws NotPlannable {
    this.rows = rows;
    this.remarks = draft.remarks;
    this.rules = rules(material);
    List<Asked> asked = new ArrayList<>();
    for (int row : material.parts()) {
      draft.called.put(rows.name(row), rows.called(row));
      remarks.read(rows.called(row), () -> asked(row)).ifPresent(one -> one.ifPresent(asked::add));
    }
    List<SawStop> stops = SawStops.of(asked.stream().map(Asked::part).toList(), tolerance);
    draft.stops = stops;
    stops.forEach(stop -> stop.parts().forEach(part -> stopOf.put(part.label(), stop)));
    Map<String, List<Asked>> together = new LinkedHashMap<>();
    asked.forEach(one -> share(one, together));
    together.forEach(
        (name, parts) ->
            remarks.read("the matched set " + name, () -> set(name, parts)).ifPresent(sets::add));
  }

  /** The widest kerf of all parts serves every one; they nest only where all do alike. */
  private StickRules rules(Material material) throws NotPlannable {
    Rational kerf = Rational.ZERO;
    Rational leastNest = null;
    Rational mostNest = Rational.ZERO;
    for (int row : material.parts()) {
      Rational ownKerf = lost(row, PlanRole.KERF);
      Rational nest = lost(row, PlanRole.NESTS_BY);
      kerf = ownKerf.compareTo(kerf) > 0 ? ownKerf : kerf;
      leastNest = leastNest == null || nest.compareTo(leastNest) < 0 ? nest : leastNest;
      mostNest = nest.compareTo(mostNest) > 0 ? nest : mostNest;
    }
    return new StickRules(kerf, mostNest.equals(leastNest) ? mostNest : Rational.ZERO);
  }

  private Rational lost(int row, PlanRole role) throws NotPlannable {
    try {
      return rows.notNegative(row, role);
    } catch (NotPlannable refusal) {
      throw new NotPlannable("%s: %s".formatted(rows.called(row), refusal.reason()));
    }
  }

  /** What is asked for of one row; absent where it is none. */
  private Optional<Asked> asked(int row) throws NotPlannable {
    int count = rows.count(row, PlanRole.QUANTITY);
    if (count == 0) {
      return Optional.empty();
    }
    Part part = new Part(rows.name(row), rows.number(row, PlanRole.LENGTH, Rational.ZERO), count);
    checkAlone(part);
    return Optional.of(new Asked(row, part));
  }

  /** A part that is refused by itself is not to take the others with it. */
  private void checkAlone(Part part) {
    new StickJob(List.of(part.times(1)), List.of(), rules);
  }

  private void share(Asked asked, Map<String, List<Asked>> together) {
    Optional<String> set = remarks.read(rows.called(asked.row()), () -> set(asked.row()));
    if (set.isPresent() && set.get().isEmpty()) {
      loose.add(asCut(asked.part(), asked.part().count()));
    } else if (set.isPresent()) {
      together.computeIfAbsent(set.get(), name -> new ArrayList<>()).add(asked);
    }
  }

  /** The matched set that a part belongs to; none has no name. */
  private String set(int row) throws NotPlannable {
    if (!rows.says(PlanRole.MATCHED_SET)) {
      return "";
    }
    Value set = rows.value(row, PlanRole.MATCHED_SET);
    return set instanceof Value.Row name ? name.name() : ((Value.Text) set).text().strip();
  }

  /**
   * The parts of a set go round in turn: with two of each of two sides, as they lie round what they
   * enclose.
   */
  private MatchedSet set(String name, List<Asked> asked) throws NotPlannable {
    int count = sets(asked);
    List<Part> inOrder = new ArrayList<>();
    boolean more = true;
    for (int round = 0; more; round++) {
      more = false;
      for (Asked one : asked) {
        int ofEach = one.part().count() / count;
        if (round < ofEach) {
          inOrder.add(asCut(one.part(), 1));
        }
        more |= round + 1 < ofEach;
      }
    }
    return new MatchedSet(name, inOrder, count);
  }

  /** How many sets the parts of one make up. */
  private int sets(List<Asked> asked) throws NotPlannable {
    int sets = rows.says(PlanRole.SETS) ? rows.count(asked.get(0).row(), PlanRole.SETS) : 1;
    for (Asked one : asked) {
      boolean sameSets = !rows.says(PlanRole.SETS) || rows.count(one.row(), PlanRole.SETS) == sets;
      if (sets == 0 || !sameSets || one.part().count() % sets != 0) {
        throw new NotPlannable(
            "%d of \"%s\" cannot be shared among %d sets; enter a multiple of the number of sets"
                .formatted(one.part().count(), one.part().label(), sets));
      }
    }
    return sets;
  }

  private Part asCut(Part part, int count) {
    return new Part(part.label(), stop(part).length(), count);
  }

  boolean isEmpty() {
    return loose.isEmpty() && sets.isEmpty();
  }

  List<Part> loose() {
    return loose;
  }

  List<MatchedSet> sets() {
    return sets;
  }

  StickRules rules() {
    return rules;
  }

  private SawStop stop(Part part) {
    SawStop stop = stopOf.get(part.label());
    if (stop == null) {
      throw new IllegalStateException("no stop for " + part.label());
    }
    return stop;
  }
}
