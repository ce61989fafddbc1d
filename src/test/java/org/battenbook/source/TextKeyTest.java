package org.battenbook.source;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TextKeyTest {
  @Test
  void a_key_is_its_own_key() {
    assertThat(TextKey.of("top rail 2")).isSameAs(TextKey.of(TextKey.of("top rail 2")));
    assertThat(TextKey.of("")).isEmpty();
  }

  @Test
  void case_and_spaces_do_not_count() {
    for (String text : new String[] {"Top Rail", " top  rail", "top\trail ", "top\u00a0rail"}) {
      assertThat(TextKey.of(text)).as(text).isEqualTo("top rail");
    }
  }

  /** NFC, Unicode's annex 15: an e and a combining acute are the same as é. */
  @Test
  void composed_and_decomposed_letters_are_alike() {
    assertThat(TextKey.of("Cafe\u0301")).isEqualTo(TextKey.of("CAF\u00c9")).isEqualTo("caf\u00e9");
  }

  @Test
  void letters_are_lowered_alike_in_every_language() {
    assertThat(TextKey.of("TITLE")).isEqualTo("title");
  }

  @Test
  void commas_and_quotes_stay() {
    assertThat(TextKey.of("Tide chart, \"north\"")).isEqualTo("tide chart, \"north\"");
  }
}
