package org.battenbook.graph;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Dependencies between keys. Every answer depends only on the order in which keys and edges were
 * added. Not safe for several threads while it is being built.
 *
 * @param <K> compared by {@code equals}
 */
public final class Graph<K> {
  private final Map<K, Node<K>> nodes = new LinkedHashMap<>();

  /** Worked out when first asked for, forgotten when the graph changes. */
  private @Nullable Order<K> order;

  /** Adds a key, unless it is there. */
  public void add(K key) {
    node(key);
  }

  /** Says that {@code user} needs {@code needed}, adding those of them that are not there. */
  public void addEdge(K user, K needed) {
    Node<K> from = node(user);
    Node<K> to = node(needed);
    from.needs.add(to);
    to.users.add(from);
    order = null;
  }

  private Node<K> node(K key) {
    return nodes.computeIfAbsent(
        key,
        added -> {
          order = null;
          return new Node<>(added, nodes.size());
        });
  }

  private Node<K> known(K key) {
    Node<K> node = nodes.get(key);
    if (node == null) {
      throw new IllegalArgumentException("not in the graph: " + key);
    }
    return node;
  }

  /** All keys, in the order they were added. */
  public Set<K> keys() {
    return Collections.unmodifiableSet(nodes.keySet());
  }

  /** What a key needs directly, in the order the edges were added. */
  public Set<K> needs(K key) {
    return keys(known(key).needs);
  }

  /** What needs a key directly, in the order the edges were added. */
  public Set<K> users(K key) {
    return keys(known(key).users);
  }

  /**
   * The order to work things out in: what is needed comes before what needs it. Keys that need one
   * another in a circle come together, in the order they were added; all others come alone.
   */
  public List<List<K>> componentsInOrder() {
    return order().components.stream()
        .map(component -> component.stream().map(node -> node.key).toList())
        .toList();
  }

  /**
   * A shortest circle among these keys, each needing the next and the last the first; it begins
   * with the one that was added first. Empty if there is none. Among very many keys it may be short
   * rather than shortest.
   *
   * @param among a component of {@link #componentsInOrder}, or any keys
   */
  public Optional<List<K>> circle(Collection<K> among) {
    return new ShortestCircle<>(among.stream().map(this::known).toList()).find();
  }

  /** What a key feeds, directly and by way of others, in the order to work it out in. */
  public Set<K> feeds(K key) {
    return feeds(Set.of(key));
  }

  /**
   * What any of these keys feeds, in the order to work it out in. A key is among them only if it
   * feeds another or itself.
   */
  public Set<K> feeds(Collection<K> changed) {
    Set<Node<K>> reached = new HashSet<>();
    Deque<Node<K>> rest = new ArrayDeque<>();
    changed.forEach(key -> rest.add(known(key)));
    while (!rest.isEmpty()) {
      rest.remove().users.stream().filter(reached::add).forEach(rest::add);
    }
    Comparator<Node<K>> byRank = Comparator.comparingInt(order()::rank);
    return keys(reached.stream().sorted(byRank).toList());
  }

  private Order<K> order() {
    Order<K> known = order;
    if (known == null) {
      known = new Order<>(nodes.values());
      order = known;
    }
    return known;
  }

  private static <K> Set<K> keys(Collection<Node<K>> nodes) {
    Set<K> keys = new LinkedHashSet<>();
    nodes.forEach(node -> keys.add(node.key));
    return keys;
  }
}
