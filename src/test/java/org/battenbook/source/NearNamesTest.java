package org.battenbook.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NearNamesTest {
  private static final long SEED = 20261127;

  @Test
  void two_neighboring_letters_swapped_are_one_slip() {
    assertThat(NearNames.question("wdith", List.of("height", "width")))
        .isEqualTo("did you mean 'width'?");
    assertThat(new EditDistance("ab", 5).to("ba")).isEqualTo(1);
  }

  @Test
  void a_name_that_holds_the_words_is_near_however_long_it_is() {
    assertThat(NearNames.of("allowance", List.of("lip", "fitting allowance of the rabbet")))
        .containsExactly("fitting allowance of the rabbet");
  }

  @Test
  void the_nearest_stand_first_and_no_more_than_three() {
    assertThat(NearNames.of("railing", List.of("rails", "raining", "mat", "sailing", "railings")))
        .containsExactly("raining", "sailing", "railings");
  }

  @Test
  void names_of_ninety_thousand_letters_are_compared_at_once() {
    String wanted = "a".repeat(90_000);
    assertThat(NearNames.of(wanted, List.of("b".repeat(90_000), wanted + "b")))
        .containsExactly(wanted + "b");
  }

  @Test
  void within_its_bound_a_distance_is_that_of_the_whole_table() {
    Random random = new Random(SEED);
    for (int i = 0; i < 20_000; i++) {
      String from = word(random);
      String to = word(random);
      int most = 1 + random.nextInt(4);
      assertThat(new EditDistance(from, most).to(to))
          .as("seed %d: '%s' to '%s' within %d", SEED, from, to, most)
          .isEqualTo(Math.min(whole(from, to), most + 1));
    }
  }

  private static String word(Random random) {
    StringBuilder word = new StringBuilder();
    int letters = random.nextInt(9);
    for (int i = 0; i < letters; i++) {
      word.append((char) ('a' + random.nextInt(3)));
    }
    return word.toString();
  }

  /** The textbook recursion, over the whole table. */
  private static int whole(String a, String b) {
    int[][] table = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        table[i][j] = i == 0 || j == 0 ? i + j : least(table, a, b, i, j);
      }
    }
    return table[a.length()][b.length()];
  }

  private static int least(int[][] table, String a, String b, int i, int j) {
    int replaced = table[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
    int edits = Math.min(replaced, Math.min(table[i - 1][j], table[i][j - 1]) + 1);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(edits, table[i - 2][j - 2] + 1) : edits;
  }
}
