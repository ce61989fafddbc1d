package org.battenbook.cli;

import java.io.InputStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.battenbook.planstore.PlanStore;

/**
 * What a command finds around it. That of the process is asked for here alone, so that a test can
 * set each of these.
 *
 * @param plans where plans are kept
 * @param keys what the person types, line by line
 */
record Surroundings(Terminal terminal, PlanStore plans, InputStream keys) {
  private static final String PLANS = "plans";

  static Surroundings ofProcess() {
    PlanStore plans =
        cacheFolder(
                System.getenv(),
                System.getProperty("os.name", ""),
                System.getProperty("user.home", ""))
            .<PlanStore>map(folder -> new CachedPlans(folder.resolve(PLANS)))
            .orElse(PlanStore.NONE);
    return new Surroundings(Terminal.ofProcess(), plans, System.in);
  }

  /**
   * The folder of the user's cache that is ours: below {@code XDG_CACHE_HOME} where that is said,
   * else where the platform keeps caches. Absent where there is none; a path that is not absolute
   * counts as none, as the XDG Base Directory Specification asks.
   */
  static Optional<Path> cacheFolder(Map<String, String> environment, String system, String home) {
    String name = system.toLowerCase(Locale.ROOT);
    Optional<Path> said = absolute(environment.getOrDefault("XDG_CACHE_HOME", ""));
    if (said.isPresent()) {
      return said.map(folder -> folder.resolve("battenbook"));
    }
    if (name.startsWith("windows")) {
      return absolute(environment.getOrDefault("LOCALAPPDATA", ""))
          .map(folder -> folder.resolve("battenbook").resolve("cache"));
    }
    return absolute(home)
        .map(
            folder ->
                name.startsWith("mac")
                    ? folder.resolve("Library").resolve("Caches")
                    : folder.resolve(".cache"))
        .map(folder -> folder.resolve("battenbook"));
  }

  private static Optional<Path> absolute(String path) {
    try {
      return path.isEmpty()
          ? Optional.empty()
          : Optional.of(Path.of(path)).filter(Path::isAbsolute);
    } catch (InvalidPathException noPath) {
      return Optional.empty();
    }
  }
}
