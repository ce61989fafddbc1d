package org.battenbook.plan.stick;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.battenbook.plan.Effort;
import org.battenbook.plan.Offers;
import org.battenbook.plan.PlanWatch;
import org.junit.jupiter.api.Test;

/** The same sticks, handier: worked by hand. */
class RegroupingTest {
  private static StickInstance sticksOf(long capacity, int... demand) {
    return new StickInstance(
        new long[] {10, 6, 4},
        demand,
        new long[] {capacity},
        new long[] {1},
        new int[] {Offers.UNLIMITED},
        new long[] {1});
  }

  private static Pattern pattern(int... countOfKind) {
    return Pattern.of(0, countOfKind);
  }

  private static List<Pattern> better(StickInstance instance, Pattern... sticks) {
    StickPacking packing =
        new StickPacking(List.of(sticks), sticks.length, new int[instance.kinds()]);
    return Regrouping.better(instance, packing, Effort.forTidying(PlanWatch.NONE)).sticks();
  }

  @Test
  void what_is_left_of_two_sticks_is_left_of_one() {
    StickInstance instance = sticksOf(16, 1, 1, 1);
    List<Pattern> sticks = better(instance, pattern(1, 0, 1), pattern(0, 1, 0));
    assertThat(sticks).containsExactlyInAnyOrder(pattern(1, 1, 0), pattern(0, 0, 1));
  }

  @Test
  void a_stick_that_the_others_can_take_in_is_not_taken() {
    StickInstance instance = sticksOf(20, 1, 1, 1);
    List<Pattern> sticks = better(instance, pattern(1, 1, 0), pattern(0, 0, 1));
    assertThat(sticks).containsExactly(pattern(1, 1, 1));
  }

  @Test
  void two_sticks_are_shared_out_so_that_one_is_like_others() {
    StickInstance instance =
        new StickInstance(
            new long[] {8, 6, 4, 2},
            new int[] {3, 4, 1, 2},
            new long[] {14},
            new long[] {1},
            new int[] {Offers.UNLIMITED},
            new long[] {1});
    Pattern often = pattern(1, 1, 0, 0);
    List<Pattern> sticks = better(instance, often, often, pattern(1, 0, 1, 1), pattern(0, 2, 0, 1));
    assertThat(sticks).containsExactlyInAnyOrder(often, often, often, pattern(0, 1, 1, 2));
  }

  /**
   * The last stick has an offcut of 10, and the one before it comes to one of 3 by the piece of 11,
   * which is too short to keep. With pieces of 22 and 15 changed over they have 3 and 10, and both
   * are kept.
   */
  @Test
  void of_two_equal_longest_offcuts_the_next_longest_decides() {
    StickInstance instance =
        new StickInstance(
            new long[] {40, 22, 15, 11},
            new int[] {1, 1, 1, 1},
            new long[] {70, 36, 25},
            new long[] {1, 1, 1},
            new int[] {1, 1, 1},
            new long[] {1, 5, 1});
    List<Pattern> sticks =
        better(
            instance,
            Pattern.of(0, new int[] {1, 0, 0, 1}),
            Pattern.of(1, new int[] {0, 1, 0, 0}),
            Pattern.of(2, new int[] {0, 0, 1, 0}));
    assertThat(sticks)
        .containsExactlyInAnyOrder(
            Pattern.of(0, new int[] {1, 0, 0, 0}),
            Pattern.of(1, new int[] {0, 0, 1, 1}),
            Pattern.of(2, new int[] {0, 1, 0, 0}));
  }
}
