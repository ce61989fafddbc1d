package org.battenbook.graph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class GraphTest {
  private static final long SEED = Long.getLong("seed", 20_260_314);

  /** Each edge as {@code user>needed}. */
  private static Graph<String> graph(String... edges) {
    Graph<String> graph = new Graph<>();
    for (String edge : edges) {
      int arrow = edge.indexOf('>');
      graph.addEdge(edge.substring(0, arrow), edge.substring(arrow + 1));
    }
    return graph;
  }

  @Test
  void what_is_needed_comes_before_what_needs_it() {
    Graph<String> graph = graph("rail>rabbet", "rabbet>mat", "mat>art", "mat>border");
    assertThat(graph.componentsInOrder())
        .containsExactly(
            List.of("art"), List.of("border"), List.of("mat"), List.of("rabbet"), List.of("rail"));
  }

  @Test
  void keys_that_need_nothing_keep_the_order_they_were_added_in() {
    Graph<String> graph = new Graph<>();
    List.of("c", "a", "b", "a").forEach(graph::add);
    assertThat(graph.componentsInOrder()).containsExactly(List.of("c"), List.of("a"), List.of("b"));
    assertThat(graph.keys()).containsExactly("c", "a", "b");
  }

  @Test
  void keys_in_a_circle_come_together_in_the_order_they_were_added() {
    Graph<String> graph = graph("c>b", "b>a", "a>c", "a>z", "user>a");
    assertThat(graph.componentsInOrder())
        .containsExactly(List.of("z"), List.of("c", "b", "a"), List.of("user"));
  }

  @Test
  void a_circle_is_told_in_order_from_the_key_added_first() {
    assertThat(graph("b>c", "c>a", "a>b").circle(List.of("a", "b", "c")))
        .contains(List.of("b", "c", "a"));
    assertThat(graph("a>a").circle(List.of("a"))).contains(List.of("a"));
    assertThat(graph("a>b").circle(List.of("a", "b"))).isEmpty();
  }

  @Test
  void the_shortest_circle_is_found_among_longer_ones() {
    Graph<String> graph = graph("a>b", "b>c", "c>d", "d>a", "d>e", "e>d");
    assertThat(graph.circle(graph.keys())).contains(List.of("d", "e"));
  }

  @Test
  void a_circle_stays_among_the_keys_asked_for() {
    Graph<String> graph = graph("a>b", "b>a", "b>c", "c>b");
    assertThat(graph.circle(List.of("b", "c"))).contains(List.of("b", "c"));
    assertThat(graph.circle(List.of("a", "c"))).isEmpty();
  }

  @Test
  void a_key_feeds_its_users_and_theirs_in_order_and_a_diamond_once() {
    Graph<String> graph = graph("total>left", "total>right", "left>kerf", "right>kerf", "x>y");
    assertThat(graph.feeds("kerf")).containsExactly("left", "right", "total");
    assertThat(graph.feeds("total")).isEmpty();
    assertThat(graph.feeds(List.of("left", "y"))).containsExactly("total", "x");
  }

  @Test
  void a_key_feeds_itself_only_in_a_circle() {
    assertThat(graph("a>b", "b>a").feeds("a")).containsExactly("a", "b");
  }

  @Test
  void neighbors_are_those_of_the_edges_each_once() {
    Graph<String> graph = graph("a>c", "a>b", "a>c");
    assertThat(graph.needs("a")).containsExactly("c", "b");
    assertThat(graph.users("c")).containsExactly("a");
    assertThatThrownBy(() -> graph.needs("nobody"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("not in the graph: nobody");
  }

  @Test
  void an_order_already_asked_for_takes_later_edges_in() {
    Graph<String> graph = graph("a>b");
    assertThat(graph.componentsInOrder()).containsExactly(List.of("b"), List.of("a"));
    graph.addEdge("b", "c");
    graph.add("d");
    assertThat(graph.componentsInOrder())
        .containsExactly(List.of("c"), List.of("b"), List.of("a"), List.of("d"));
  }

  @Test
  void a_chain_of_a_hundred_thousand_does_not_overflow_the_stack() {
    Graph<Integer> graph = new Graph<>();
    int length = 100_000;
    IntStream.range(0, length).forEach(i -> graph.addEdge(i, i + 1));
    assertThat(graph.componentsInOrder().get(0)).containsExactly(length);
    assertThat(graph.feeds(length)).hasSize(length).startsWith(length - 1).endsWith(0);
    graph.addEdge(length, 0);
    assertThat(graph.componentsInOrder()).hasSize(1);
    assertThat(graph.circle(graph.keys()).orElseThrow()).hasSize(length + 1).startsWith(0, 1);
  }

  @Test
  void order_circles_and_feeds_are_those_of_plain_reachability() {
    Random random = new Random(SEED);
    for (int i = 0; i < 300; i++) {
      Graph<Integer> graph = randomGraph(random);
      boolean[][] reaches = reachability(graph);
      List<Integer> before = new ArrayList<>();
      for (List<Integer> component : graph.componentsInOrder()) {
        before.addAll(component);
        component.forEach(
            key -> {
              assertThat(before).as("seed %d", SEED).containsAll(graph.needs(key));
              assertThat(component).as("seed %d", SEED).isEqualTo(mutual(key, reaches));
            });
        Optional<List<Integer>> circle = graph.circle(component);
        int first = component.get(0);
        assertThat(circle.isPresent()).as("seed %d", SEED).isEqualTo(reaches[first][first]);
        circle.ifPresent(found -> assertThatItIsOne(found, graph));
      }
      assertThat(before).as("seed %d", SEED).containsExactlyInAnyOrderElementsOf(graph.keys());
      for (int key : graph.keys()) {
        assertThat(graph.feeds(key))
            .as("seed %d", SEED)
            .containsExactlyElementsOf(
                before.stream().filter(other -> reaches[other][key]).toList());
      }
    }
  }

  private static Graph<Integer> randomGraph(Random random) {
    Graph<Integer> graph = new Graph<>();
    int size = 1 + random.nextInt(12);
    IntStream.range(0, size).forEach(graph::add);
    for (int edges = random.nextInt(2 * size); edges > 0; edges--) {
      graph.addEdge(random.nextInt(size), random.nextInt(size));
    }
    return graph;
  }

  /** Which key needs which, directly or not, after S. Warshall: by way of one key after another. */
  private static boolean[][] reachability(Graph<Integer> graph) {
    int size = graph.keys().size();
    boolean[][] reaches = new boolean[size][size];
    graph.keys().forEach(key -> graph.needs(key).forEach(need -> reaches[key][need] = true));
    for (int by = 0; by < size; by++) {
      for (int from = 0; from < size; from++) {
        for (int to = 0; to < size; to++) {
          reaches[from][to] |= reaches[from][by] && reaches[by][to];
        }
      }
    }
    return reaches;
  }

  private static List<Integer> mutual(int key, boolean[][] reaches) {
    return IntStream.range(0, reaches.length)
        .filter(other -> other == key || (reaches[key][other] && reaches[other][key]))
        .boxed()
        .toList();
  }

  private static void assertThatItIsOne(List<Integer> circle, Graph<Integer> graph) {
    assertThat(circle).as("seed %d", SEED).doesNotHaveDuplicates();
    for (int i = 0; i < circle.size(); i++) {
      assertThat(graph.needs(circle.get(i)))
          .as("seed %d", SEED)
          .contains(circle.get((i + 1) % circle.size()));
    }
  }
}
