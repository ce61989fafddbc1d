package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Where plans are kept, on each platform. */
class SurroundingsTest {
  @Test
  void linux_keeps_them_in_the_cache_of_the_home() {
    assertThat(Surroundings.cacheFolder(Map.of(), "Linux", "/home/maker"))
        .contains(Path.of("/home/maker/.cache/battenbook"));
  }

  @Test
  void so_does_macos_in_its_own() {
    assertThat(Surroundings.cacheFolder(Map.of(), "Mac OS X", "/Users/maker"))
        .contains(Path.of("/Users/maker/Library/Caches/battenbook"));
  }

  @Test
  void windows_says_where_by_a_variable() {
    assertThat(Surroundings.cacheFolder(Map.of("LOCALAPPDATA", "/local"), "Windows 11", "/maker"))
        .contains(Path.of("/local/battenbook/cache"));
    assertThat(Surroundings.cacheFolder(Map.of(), "Windows 11", "/maker")).isEmpty();
  }

  @Test
  void a_user_who_says_where_is_followed_everywhere() {
    Map<String, String> said = Map.of("XDG_CACHE_HOME", "/fast", "LOCALAPPDATA", "/local");
    for (String system : new String[] {"Linux", "Mac OS X", "Windows 11"}) {
      assertThat(Surroundings.cacheFolder(said, system, "/maker"))
          .contains(Path.of("/fast/battenbook"));
    }
  }

  @Test
  void a_path_that_is_not_absolute_counts_as_none() {
    assertThat(Surroundings.cacheFolder(Map.of("XDG_CACHE_HOME", "here"), "Linux", "/home/maker"))
        .contains(Path.of("/home/maker/.cache/battenbook"));
    assertThat(Surroundings.cacheFolder(Map.of(), "Linux", "")).isEmpty();
    assertThat(Surroundings.cacheFolder(Map.of(), "Linux", "\0")).isEmpty();
  }
}
