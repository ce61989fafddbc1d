package org.battenbook.evaluate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.battenbook.book.Place;
import org.battenbook.check.CheckedBook;
import org.battenbook.check.CheckedPlace;
import org.battenbook.check.Need;
import org.battenbook.check.Need.Reach;
import org.battenbook.graph.Graph;
import org.battenbook.source.Diagnostics;
import org.battenbook.value.Kind;

/** Orders the places of a book, so that each follows what it reads. Reports circles. */
final class Ordering {
  private final CheckedBook book;
  private final Slots slots;
  private final Diagnostics diagnostics;
  private final Map<Place, Set<Need>> needs = new LinkedHashMap<>();

  private Ordering(CheckedBook book, Slots slots, List<Set<Need>> needs, Diagnostics diagnostics) {
    this.book = book;
    this.slots = slots;
    this.diagnostics = diagnostics;
    for (CheckedPlace checked : book.places()) {
      this.needs.put(checked.place(), needs.get(slots.of(checked.place()).number()));
    }
  }

  /**
   * Orders places.
   *
   * @param needs what each place needs, by its slot
   * @param diagnostics takes circles
   */
  static List<Stage> order(
      CheckedBook book, Slots slots, List<Set<Need>> needs, Diagnostics diagnostics) {
    return new Ordering(book, slots, needs, diagnostics).order();
  }

  private List<Stage> order() {
    List<Stage> stages = new ArrayList<>();
    for (List<Place> component :
        graph(needs.keySet(), Set.of(Reach.values())).componentsInOrder()) {
      stages.add(stage(component));
    }
    return stages;
  }

  private Graph<Place> graph(Set<Place> places, Set<Reach> reaches) {
    Graph<Place> graph = new Graph<>();
    places.forEach(graph::add);
    for (Place place : places) {
      for (Need need : needs(place)) {
        if (places.contains(need.place()) && reaches.contains(need.reach())) {
          graph.addEdge(place, need.place());
        }
      }
    }
    return graph;
  }

  private Set<Need> needs(Place place) {
    return needs.getOrDefault(place, Set.of());
  }

  private Stage stage(List<Place> component) {
    if (component.size() == 1 && !readsItself(component.get(0))) {
      return new Stage(List.of(slots.of(component.get(0))), false);
    }
    Set<Place> inOrder = new LinkedHashSet<>(component);
    Graph<Place> withoutAbove = graph(inOrder, Set.of(Reach.WHOLE, Reach.SAME_ROW, Reach.ROWS));
    var circle = withoutAbove.circle(inOrder);
    if (circle.isPresent()) {
      report(circle.get());
      return new Stage(List.of(), false);
    }
    if (!sameTable(component)) {
      report(graph(inOrder, Set.of(Reach.values())).circle(inOrder).orElse(component));
      return new Stage(List.of(), false);
    }
    component.stream().filter(p -> book.place(p).kind() == Kind.UNKNOWN).forEach(this::noKind);
    List<Slot> rowOrder = new ArrayList<>();
    withoutAbove.componentsInOrder().forEach(one -> rowOrder.add(slots.of(one.get(0))));
    return new Stage(rowOrder, true);
  }

  private boolean readsItself(Place place) {
    for (Need need : needs(place)) {
      if (need.place() == place) {
        return true;
      }
    }
    return false;
  }

  /** Only columns of one table can go row by row together. */
  private static boolean sameTable(List<Place> component) {
    return component.stream().map(Place::table).distinct().count() == 1;
  }

  /** A column that reads only itself, in rows above, so that nothing says its kind. */
  private void noKind(Place place) {
    diagnostics.fault(
        "kind-unknown",
        place.layer().span(),
        "'%s' comes only from itself, so its kind is not known".formatted(place.label()),
        "start with a value: '%s = if first row then … else …'".formatted(place.label()));
  }

  private void report(List<Place> circle) {
    List<String> names = new ArrayList<>();
    circle.forEach(place -> names.add("'" + place.words() + "'"));
    names.add(names.get(0));
    Place first = circle.get(0);
    diagnostics.fault(
        "formula-circle",
        first.layer().span(),
        circle.size() == 1
            ? "%s is calculated from itself".formatted(names.get(0))
            : "these are calculated from each other in a circle: " + String.join(" needs ", names),
        "give one of them a value that does not need the others");
  }
}
