package org.battenbook.graph;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Looks for a shortest circle, breadth first from one node after another. */
final class ShortestCircle<K> {

  /** Nodes looked at before a circle already found is good enough. */
  private static final int ENOUGH = 1_000_000;

  private final List<Node<K>> starts;
  private final Set<Node<K>> among;
  private int looked;

  ShortestCircle(Collection<Node<K>> among) {
    this.starts = among.stream().sorted(Comparator.comparingInt(Node::place)).toList();
    this.among = new HashSet<>(among);
  }

  Optional<List<K>> find() {
    List<Node<K>> shortest = List.of();
    for (Node<K> start : starts) {
      if (!shortest.isEmpty() && looked > ENOUGH) {
        break;
      }
      List<Node<K>> circle = circleThrough(start);
      if (!circle.isEmpty() && (shortest.isEmpty() || circle.size() < shortest.size())) {
        shortest = circle;
      }
      among.remove(start);
    }
    return shortest.isEmpty() ? Optional.empty() : Optional.of(keys(shortest));
  }

  /**
   * A shortest circle through a node, beginning with it; empty if there is none. Circles through
   * earlier nodes have been found already, so those are left out: the start is always the first.
   */
  private List<Node<K>> circleThrough(Node<K> start) {
    Map<Node<K>, Node<K>> cameFrom = new HashMap<>();
    Deque<Node<K>> rest = new ArrayDeque<>(List.of(start));
    while (!rest.isEmpty()) {
      Node<K> here = rest.remove();
      looked++;
      if (here.needs.contains(start)) {
        return pathTo(here, cameFrom);
      }
      for (Node<K> needed : here.needs) {
        if (among.contains(needed)
            && needed != start
            && cameFrom.putIfAbsent(needed, here) == null) {
          rest.add(needed);
        }
      }
    }
    return List.of();
  }

  private List<Node<K>> pathTo(Node<K> end, Map<Node<K>, Node<K>> cameFrom) {
    List<Node<K>> path = new ArrayList<>();
    for (@Nullable Node<K> node = end; node != null; node = cameFrom.get(node)) {
      path.add(node);
    }
    Collections.reverse(path);
    return path;
  }

  private static <K> List<K> keys(List<Node<K>> nodes) {
    return nodes.stream().map(node -> node.key).toList();
  }
}
