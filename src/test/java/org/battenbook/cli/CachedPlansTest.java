package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever a cache folder is like, a plan is kept there or it is not, and nothing else happens. */
class CachedPlansTest {
  private static final byte[] ENTRY = {1, 2, 3};
  private static final String NAME = "0123abcd";

  @TempDir Path home;

  private Path folder() {
    return home.resolve("cache").resolve("plans");
  }

  private CachedPlans plans() {
    return new CachedPlans(folder());
  }

  private List<String> files() throws IOException {
    try (Stream<Path> files = Files.list(folder())) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void an_entry_is_read_as_it_was_written_last() {
    assertThat(plans().read(NAME)).isNull();
    plans().write(NAME, new byte[] {9});
    plans().write(NAME, ENTRY);
    assertThat(plans().read(NAME)).isEqualTo(ENTRY);
    assertThat(plans().read("other")).isNull();
  }

  @Test
  void it_is_for_its_owner_alone() throws IOException {
    plans().write(NAME, ENTRY);
    assertThat(files()).containsExactly(NAME + ".plan");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder())))
        .isEqualTo("rwx------");
    Path file = folder().resolve(NAME + ".plan");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-------");
  }

  @Test
  void a_file_in_place_of_the_folder_is_left_alone() throws IOException {
    Files.createDirectories(folder().getParent());
    Files.writeString(folder(), "mine");
    plans().write(NAME, ENTRY);
    assertThat(plans().read(NAME)).isNull();
    assertThat(folder()).hasContent("mine");
  }

  @Test
  void a_file_in_place_of_its_parent_is_left_alone() throws IOException {
    Files.writeString(folder().getParent(), "mine");
    plans().write(NAME, ENTRY);
    assertThat(plans().read(NAME)).isNull();
    assertThat(folder().getParent()).hasContent("mine");
  }

  @Test
  void a_link_in_place_of_the_folder_leads_nowhere() throws IOException {
    Path elsewhere = Files.createDirectory(home.resolve("elsewhere"));
    Files.writeString(elsewhere.resolve(NAME + ".plan"), "theirs");
    Files.createDirectories(folder().getParent());
    Files.createSymbolicLink(folder(), elsewhere);
    plans().write(NAME, ENTRY);
    assertThat(plans().read(NAME)).isNull();
    assertThat(elsewhere.resolve(NAME + ".plan")).hasContent("theirs");
  }

  @Test
  void a_link_in_place_of_an_entry_is_not_followed() throws IOException {
    Path target = Files.writeString(home.resolve("target"), "theirs");
    plans().write("other", ENTRY);
    Path link = Files.createSymbolicLink(folder().resolve(NAME + ".plan"), target);
    assertThat(plans().read(NAME)).isNull();
    plans().write(NAME, ENTRY);
    assertThat(target).hasContent("theirs");
    assertThat(Files.isSymbolicLink(link)).isTrue();
  }

  @Test
  void a_folder_in_place_of_an_entry_stays() {
    plans().write("other", ENTRY);
    Path inside = folder().resolve(NAME + ".plan").resolve("mine");
    assertThat(inside.toFile().mkdirs()).isTrue();
    plans().write(NAME, ENTRY);
    assertThat(plans().read(NAME)).isNull();
    assertThat(inside).isDirectory();
  }

  @Test
  void what_is_too_large_is_neither_written_nor_read() throws IOException {
    byte[] large = new byte[(4 << 20) + 1];
    plans().write(NAME, large);
    assertThat(plans().read(NAME)).isNull();
    plans().write(NAME, ENTRY);
    Files.write(folder().resolve(NAME + ".plan"), large);
    assertThat(plans().read(NAME)).isNull();
  }

  @Test
  void where_nothing_can_be_written_nothing_is_said() throws IOException {
    plans().write(NAME, ENTRY);
    Files.setPosixFilePermissions(folder(), PosixFilePermissions.fromString("r-x------"));
    plans().write("other", ENTRY);
    assertThat(plans().read(NAME)).isEqualTo(ENTRY);
    Files.setPosixFilePermissions(folder(), PosixFilePermissions.fromString("---------"));
    plans().write("third", ENTRY);
    plans().read(NAME);
    Files.setPosixFilePermissions(folder(), PosixFilePermissions.fromString("rwx------"));
  }

  @Test
  void the_oldest_go_first_and_only_those_that_are_ours() throws IOException {
    plans().write("first", ENTRY);
    Path mine = Files.writeString(folder().resolve("notes.txt"), "mine");
    for (int number = 0; number < 199; number++) {
      plans().write("p" + number, ENTRY);
    }
    aged(folder().resolve("first.plan"), 1);
    aged(mine, 0);
    assertThat(files()).hasSize(201).contains("first.plan");
    plans().write("last", ENTRY);
    assertThat(files())
        .hasSize(201)
        .contains("last.plan", "notes.txt")
        .doesNotContain("first.plan");
  }

  @Test
  void all_together_take_no_more_than_sixteen_megabytes() throws IOException {
    for (int number = 0; number < 5; number++) {
      plans().write("p" + number, new byte[4 << 20]);
      aged(folder().resolve("p" + number + ".plan"), number);
    }
    plans().write("p5", new byte[4 << 20]);
    assertThat(files()).containsExactly("p2.plan", "p3.plan", "p4.plan", "p5.plan");
  }

  @Test
  void what_a_killed_run_left_goes_with_the_oldest() throws IOException {
    plans().write("first", ENTRY);
    Path part = Files.write(folder().resolve(".123.plan.battenbook-part"), new byte[16 << 20]);
    aged(part, 1);
    plans().write(NAME, ENTRY);
    assertThat(Files.exists(part, LinkOption.NOFOLLOW_LINKS)).isFalse();
    assertThat(plans().read("first")).isEqualTo(ENTRY);
  }

  private static void aged(Path file, long second) throws IOException {
    Files.setLastModifiedTime(file, FileTime.fromMillis(1_000 * second));
  }
}
