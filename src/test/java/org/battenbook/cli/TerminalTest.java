package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class TerminalTest {
  @Test
  void color_shows_on_a_terminal_only() {
    assertThat(Terminal.isColored(true, Map.of("TERM", "xterm"))).isTrue();
    assertThat(Terminal.isColored(false, Map.of("TERM", "xterm"))).isFalse();
  }

  /** As no-color.org has it: any value but an empty one. */
  @Test
  void no_color_takes_it_away() {
    assertThat(Terminal.isColored(true, Map.of("NO_COLOR", "1"))).isFalse();
    assertThat(Terminal.isColored(true, Map.of("NO_COLOR", ""))).isTrue();
  }

  @Test
  void a_dumb_terminal_has_none() {
    assertThat(Terminal.isColored(true, Map.of("TERM", "dumb"))).isFalse();
  }
}
