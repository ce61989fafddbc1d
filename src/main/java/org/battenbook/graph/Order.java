package org.battenbook.graph;

import java.util.Collection;
import java.util.List;

/** The components of a graph, each after those it needs. */
final class Order<K> {
  final List<List<Node<K>>> components;

  /** By a node's place, how many nodes come before it. */
  private final int[] ranks;

  Order(Collection<Node<K>> nodes) {
    components = new StrongComponents<K>().find(nodes);
    ranks = new int[nodes.size()];
    int rank = 0;
    for (List<Node<K>> component : components) {
      for (Node<K> node : component) {
        ranks[node.place] = rank++;
      }
    }
  }

  int rank(Node<K> node) {
    return ranks[node.place];
  }
}
