package org.battenbook.graph;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;

/**
 * Strongly connected components after R. Tarjan, "Depth-first search and linear graph algorithms",
 * SIAM Journal on Computing 1 (1972). A component is found after all that it needs, which is the
 * order wanted. The path is a list of its own: workbooks are deeper than the stack of a thread.
 */
final class StrongComponents<K> {

  /** A node that was met; open until its component is found. */
  private static final class Visit<K> {
    final Node<K> node;
    final int number;
    final Iterator<Node<K>> needs;

    /** The lowest number of an open node that is reached from here. */
    int lowest;

    boolean open = true;

    Visit(Node<K> node, int number) {
      this.node = node;
      this.number = number;
      this.lowest = number;
      this.needs = node.needs.iterator();
    }

    void reaches(int other) {
      lowest = Math.min(lowest, other);
    }
  }

  private final Map<Node<K>, Visit<K>> visits = new HashMap<>();
  private final Deque<Visit<K>> path = new ArrayDeque<>();
  private final Deque<Visit<K>> open = new ArrayDeque<>();
  private final List<List<Node<K>>> found = new ArrayList<>();

  List<List<Node<K>>> find(Collection<Node<K>> nodes) {
    for (Node<K> node : nodes) {
      if (!visits.containsKey(node)) {
        enter(node);
        walk();
      }
    }
    return found;
  }

  private void walk() {
    while (!path.isEmpty()) {
      Visit<K> here = path.element();
      if (here.needs.hasNext()) {
        meet(here, here.needs.next());
      } else {
        leave(here);
      }
    }
  }

  private void enter(Node<K> node) {
    Visit<K> visit = new Visit<>(node, visits.size());
    visits.put(node, visit);
    path.push(visit);
    open.push(visit);
  }

  private void meet(Visit<K> here, Node<K> needed) {
    Visit<K> seen = visits.get(needed);
    if (seen == null) {
      enter(needed);
    } else if (seen.open) {
      here.reaches(seen.number);
    }
  }

  private void leave(Visit<K> here) {
    path.pop();
    if (!path.isEmpty()) {
      path.element().reaches(here.lowest);
    }
    if (here.lowest == here.number) {
      close(here);
    }
  }

  /** All that was opened since is one component. */
  private void close(Visit<K> first) {
    List<Node<K>> component = new ArrayList<>();
    Visit<K> last;
    do {
      last = open.pop();
      last.open = false;
      component.add(last.node);
    } while (last != first);
    component.sort(Comparator.comparingInt(Node::place));
    found.add(component);
  }
}
