package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.battenbook.book.Loader;
import org.battenbook.book.Loader.Unreadable;
import org.battenbook.source.SourceText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The standards that a job finds where its shop has none of its own. */
class ShippedStandardsTest {
  private static final Path SOURCES = Path.of("workbooks/standards");
  private static final String FRAME_SHOP = "standards/frame-shop.batten";

  @TempDir Path folder;

  private static List<String> sources() throws IOException {
    try (Stream<Path> files = Files.list(SOURCES)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  private SourceText follow(String path, String from) throws IOException, Unreadable {
    Path job = folder.resolve(from);
    Files.createDirectories(job.getParent());
    Files.writeString(job, "page job\n");
    FolderLoader loader = FolderLoader.of(job);
    return loader.load(path, loader.load(job.toString(), null));
  }

  @Test
  void they_are_the_files_of_the_repository() throws IOException {
    assertThat(ShippedStandards.names()).isEqualTo(sources()).contains("frame-shop.batten");
    for (String name : sources()) {
      assertThat(ShippedStandards.bytes(name)).isEqualTo(Files.readAllBytes(SOURCES.resolve(name)));
    }
  }

  @Test
  void a_job_gives_the_same_values_with_them_as_with_a_copy() throws IOException, Unreadable {
    String text = Files.readString(Path.of("workbooks/first-frame.batten"));
    Path job = Files.writeString(folder.resolve("first-frame.batten"), text);
    assertThat(values(job)).isEqualTo(values(Path.of("workbooks/first-frame.batten")));
  }

  private static List<String> values(Path job) throws Loader.Unreadable {
    Workbook workbook = Workbook.open(job.toString());
    assertThat(workbook.diagnostics()).isEmpty();
    Filled filled = workbook.fill();
    return filled.checked().places().stream()
        .flatMap(place -> filled.results().spots(place.place()))
        .map(spot -> spot + " " + filled.value(spot).shown().text())
        .toList();
  }

  @Test
  void each_is_named_as_shipped_and_follows_only_its_like() throws IOException, Unreadable {
    SourceText shop = follow(FRAME_SHOP, "job.batten");
    assertThat(shop.name()).isEqualTo("shipped " + FRAME_SHOP);
    FolderLoader loader = FolderLoader.of(folder.resolve("job.batten"));
    assertThat(loader.load("mats.batten", shop).name()).isEqualTo("shipped standards/mats.batten");
    Unreadable up =
        catchThrowableOfType(Unreadable.class, () -> loader.load("../job.batten", shop));
    assertThat(up.code()).isEqualTo("no-such-file");
  }

  @Test
  void a_folder_of_that_name_beside_a_job_or_in_its_shop_wins_whole() throws Exception {
    Files.createDirectories(folder.resolve("standards"));
    Files.writeString(folder.resolve(FRAME_SHOP), "page mine\n");
    Files.writeString(folder.resolve("shop.batten"), "page shop\n");
    assertThat(follow(FRAME_SHOP, "jobs/job.batten").text()).isEqualTo("page mine\n");
    assertThat(follow(FRAME_SHOP, "job.batten").text()).isEqualTo("page mine\n");
    Unreadable missing =
        catchThrowableOfType(
            Unreadable.class, () -> follow("standards/mats.batten", "jobs/job.batten"));
    assertThat(missing.code()).isEqualTo("no-such-file");
    assertThat(missing.repair()).startsWith("your folder 'standards' is used instead of");
  }

  @Test
  void a_folder_of_their_name_is_told_apart() throws IOException, Unreadable {
    Path shelf = Files.createDirectories(folder.resolve("shipped standards"));
    Files.writeString(shelf.resolve("mats.batten"), "page mine\n");
    SourceText mine = follow("shipped standards/mats.batten", "job.batten");
    assertThat(mine.text()).isEqualTo("page mine\n");
    assertThat(ShippedStandards.isOne(mine.name())).isFalse();
  }

  @Test
  void a_name_that_is_none_of_them_is_answered_with_a_near_one() {
    Unreadable refusal =
        catchThrowableOfType(
            Unreadable.class, () -> follow("standards/frameshop.batten", "job.batten"));
    assertThat(refusal.message())
        .isEqualTo("the standards that come with Battenbook have no file 'frameshop.batten'");
    assertThat(refusal.repair()).startsWith("did you mean 'frame-shop.batten'");
  }
}
