package org.battenbook.graph;

import java.util.LinkedHashSet;
import java.util.Set;

/** A key with its edges both ways, in the order they were added. Compared by identity. */
final class Node<K> {
  final K key;

  /** How many nodes were added before. */
  final int place;

  final Set<Node<K>> needs = new LinkedHashSet<>();
  final Set<Node<K>> users = new LinkedHashSet<>();

  Node(K key, int place) {
    this.key = key;
    this.place = place;
  }

  int place() {
    return place;
  }
}
