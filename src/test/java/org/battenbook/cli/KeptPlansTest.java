package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.battenbook.planstore.MemoryStore;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No command plans what one before it has planned, unless it is asked to. */
class KeptPlansTest {
  private static final String JOB =
      """
      currency USD
      page cutting
        table parts by part
          given
            part   : text
            length : length
            needed : count
        table stock by stick
          given
            stick  : text
            length : length
        stick plan rail
          parts of parts
            length   = length
            quantity = needed
          stock of stock
            length   = length
        rows of parts
          part | length | needed
          "a"  | 20 in  | 7
          "b"  | 31 in  | 5
        rows of stock
          stick  | length
          "8 ft" | 96 in
      """;

  @TempDir Path folder;

  private String[] command(String words) throws IOException {
    Path job = Files.writeString(folder.resolve("job.batten"), JOB);
    return Stream.of(words.split(" "))
        .map(word -> word.equals("JOB") ? job.toString() : word)
        .map(word -> word.equals("FILE") ? folder.resolve("out.json").toString() : word)
        .map(word -> word.replace('_', ' '))
        .toArray(String[]::new);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "fill JOB",
        "why JOB sticks_of_rail",
        "feeds JOB needed_of_a",
        "cuts JOB",
        "export JOB --to FILE"
      })
  void a_command_plans_once_and_again_only_when_asked(String words) throws IOException {
    MemoryStore store = new MemoryStore();
    CommandRun first = CommandRun.of(store, command(words));
    assertThat(first.status()).as(first.err()).isZero();
    assertThat(store.writes).hasValue(1);
    assertThat(CommandRun.of(store, command(words))).isEqualTo(first);
    assertThat(store.writes).hasValue(1);
    assertThat(CommandRun.of(store, command(words + " --fresh"))).isEqualTo(first);
    assertThat(store.writes).hasValue(2);
    assertThat(store.entries).hasSize(1);
  }

  @Test
  void the_commands_share_what_is_planned() throws IOException {
    CachedPlans plans = new CachedPlans(folder.resolve("cache"));
    CommandRun.of(plans, command("fill JOB"));
    CommandRun.of(plans, command("cuts JOB"));
    try (Stream<Path> files = Files.list(folder.resolve("cache"))) {
      assertThat(files).hasSize(1);
    }
  }

  @Test
  void a_damaged_file_is_planned_anew_and_mended() throws IOException {
    CachedPlans plans = new CachedPlans(folder.resolve("cache"));
    CommandRun first = CommandRun.of(plans, command("cuts JOB"));
    Path file = only();
    byte[] whole = Files.readAllBytes(file);
    for (byte[] damaged :
        List.of(new byte[0], new byte[10], "no plan".getBytes(StandardCharsets.UTF_8))) {
      Files.write(file, damaged);
      assertThat(CommandRun.of(plans, command("cuts JOB"))).isEqualTo(first);
      assertThat(Files.readAllBytes(file)).isEqualTo(whole);
    }
  }

  private Path only() throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve("cache"))) {
      return files.findFirst().orElseThrow();
    }
  }
}
