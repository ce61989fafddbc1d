package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.battenbook.book.Loader;
import org.battenbook.book.Loader.Unreadable;
import org.battenbook.source.SourceText;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderLoaderTest {
  @TempDir Path top;
  private Path folder;
  private Path job;

  @BeforeEach
  void lay_a_job_beside_its_standards() throws IOException {
    folder = Files.createDirectory(top.resolve("shop"));
    job = Files.writeString(folder.resolve("ferry.batten"), "workbook \"Ferry\"\n");
    Files.createDirectory(folder.resolve("standards"));
    Files.writeString(folder.resolve("standards/frames.batten"), "page frames\n");
    Files.writeString(folder.resolve("standards/mats.batten"), "page mats\n");
    Files.writeString(top.resolve("secret.batten"), "secret");
  }

  @Test
  void what_a_job_follows_is_called_as_its_user_would_call_it() throws Unreadable {
    SourceText frames = follow("standards/frames.batten");
    assertThat(frames.name()).isEqualTo(folder + "/standards/frames.batten");
    assertThat(frames.text()).isEqualTo("page frames\n");
  }

  @Test
  void two_ways_to_a_file_give_one_name() throws Unreadable {
    SourceText frames = follow("standards/frames.batten");
    SourceText again = loader().load("../standards/../standards/frames.batten", frames);
    assertThat(again.name()).isEqualTo(frames.name());
  }

  @Test
  void paths_go_by_the_file_they_are_written_in() throws Unreadable {
    SourceText mats = loader().load("mats.batten", follow("standards/frames.batten"));
    assertThat(mats.text()).isEqualTo("page mats\n");
  }

  @Test
  void nothing_outside_the_jobs_folder_is_read() throws IOException {
    Files.createSymbolicLink(folder.resolve("link.batten"), top.resolve("secret.batten"));
    Files.createSymbolicLink(folder.resolve("up"), top);
    for (String path :
        new String[] {
          "../secret.batten", "link.batten", "up/secret.batten", top + "/secret.batten"
        }) {
      assertThat(refusalToFollow(path).code()).as(path).isEqualTo("outside-the-folder");
    }
  }

  @Test
  void what_lies_outside_has_one_answer_whether_it_is_there_or_not() throws Exception {
    SourceText from = loader().load(job.toString(), null);
    Files.createSymbolicLink(folder.resolve("dead.batten"), top.resolve("none.batten"));
    Files.createSymbolicLink(folder.resolve("dead.csv"), Path.of("../none.csv"));
    Files.createSymbolicLink(folder.resolve("way"), top.resolve("none"));
    for (String path :
        new String[] {"../none", top + "/none", "dead", "way/none", "a/../../none"}) {
      assertThat(refusalToFollow(path + ".batten").code()).isEqualTo("outside-the-folder");
      assertThat(refusalToFollow(path + ".batten").repair()).doesNotContain("did you mean");
      assertThat(refusalToList(path + ".csv", from).code()).isEqualTo("outside-the-folder");
    }
    assertThat(
            catchThrowableOfType(Unreadable.class, () -> loader().picture("../none.png", from))
                .code())
        .isEqualTo("outside-the-folder");
  }

  @Test
  void networks_drives_and_urls_are_refused_by_their_text() {
    for (String path :
        new String[] {
          "\\\\host\\share\\a.batten",
          "//host/share/a.batten",
          "\\/host/a.batten",
          "C:\\a.batten",
          "c:a.batten",
          "file:a.batten",
          "FILE:///etc/a.batten",
          "https://host/a.batten"
        }) {
      assertThat(refusalToFollow(path).code()).as(path).isEqualTo("outside-the-folder");
    }
  }

  @Test
  void only_a_file_that_ends_in_batten_is_followed() throws Exception {
    Files.writeString(folder.resolve("notes.txt"), "secret");
    Files.createSymbolicLink(folder.resolve("notes.batten"), Path.of("notes.txt"));
    assertThat(refusalToFollow("notes.txt").code()).isEqualTo("follows-ending");
    assertThat(refusalToFollow("notes.batten").code()).isEqualTo("follows-ending");
    Files.writeString(folder.resolve("LOUD.BATTEN"), "page loud\n");
    assertThat(follow("LOUD.BATTEN").text()).isEqualTo("page loud\n");
  }

  @Test
  void a_dangling_link_is_told_as_one() throws Exception {
    Path dead = Files.createSymbolicLink(folder.resolve("d.batten"), Path.of("none.batten"));
    assertThat(refusalToFollow("d.batten").message())
        .isEqualTo("'d.batten' is a link to a file that is not there");
    assertThat(refusal(dead).message())
        .isEqualTo("'d.batten' is a link to a file that is not there");
  }

  @Test
  void links_inside_the_folder_lead_to_their_files() throws Exception {
    Files.createSymbolicLink(folder.resolve("rules"), Path.of("standards"));
    assertThat(follow("rules/mats.batten").name()).isEqualTo(folder + "/standards/mats.batten");
  }

  @Test
  void a_list_comes_from_the_folder_of_the_workbook_that_names_it() throws Exception {
    SourceText frames = follow("standards/frames.batten");
    Files.writeString(folder.resolve("standards/prices.csv"), "name\nash\n");
    Files.writeString(top.resolve("secret.csv"), "name\nash\n");
    assertThat(loader().list("prices.csv", frames, null).name())
        .isEqualTo(folder + "/standards/prices.csv");
    assertThat(refusalToList("../../secret.csv", frames).code()).isEqualTo("outside-the-folder");
    assertThat(refusalToList("price.csv", frames).repair()).isEqualTo("did you mean 'prices.csv'?");
    assertThat(refusalToList("prices.txt", frames).code()).isEqualTo("list-ending");
    assertThat(refusalToList("prices\0.csv", frames).code()).isEqualTo("no-such-file");
    Files.createDirectory(folder.resolve("standards/lists.csv"));
    assertThat(refusalToList("lists.csv", frames).repair())
        .isEqualTo("name a list, a file that ends in .csv or .xlsx");
  }

  private Unreadable refusalToList(String path, SourceText from) {
    return catchThrowableOfType(Unreadable.class, () -> loader().list(path, from, null));
  }

  @Test
  void a_missing_file_is_missed_with_near_names() {
    Unreadable missing = refusalToFollow("standards/frame.batten");
    assertThat(missing.code()).isEqualTo("no-such-file");
    assertThat(missing.message()).isEqualTo("there is no file 'standards/frame.batten'");
    assertThat(missing.repair()).startsWith("did you mean 'frames.batten'");
  }

  @Test
  void a_folder_is_answered_with_what_is_in_it() {
    Unreadable refusal = refusalToFollow("standards");
    assertThat(refusal.message()).isEqualTo("'standards' is a folder");
    assertThat(refusal.repair())
        .isEqualTo("name one of the workbooks in it: frames.batten, mats.batten");
  }

  @Test
  void a_file_that_may_not_be_read_says_so() {
    Unreadable refusal =
        FolderLoader.unreadable(job, "ferry.batten", new AccessDeniedException("ferry.batten"));
    assertThat(refusal.message()).isEqualTo("'ferry.batten' may not be read");
  }

  @Test
  void a_link_to_itself_is_unreadable() throws IOException {
    Path loop = folder.resolve("loop.batten");
    Files.createSymbolicLink(loop, loop);
    assertThat(refusalToFollow("loop.batten").code()).isEqualTo("unreadable-file");
    assertThat(refusal(loop).code()).isEqualTo("unreadable-file");
  }

  @Test
  void a_name_that_no_file_can_have_is_refused() {
    assertThat(refusalToFollow("a\0b").code()).isEqualTo("no-such-file");
  }

  @Test
  void a_file_may_have_the_most_bytes_and_not_one_more() throws Exception {
    Files.write(job, new byte[] {'a', 'b', 'c'});
    assertThat(FolderLoader.of(job, 3).load("ferry.batten", null).text()).isEqualTo("abc");
    Unreadable refusal =
        catchThrowableOfType(
            Unreadable.class, () -> FolderLoader.of(job, 2).load("ferry.batten", null));
    assertThat(refusal.code()).isEqualTo("file-too-large");
  }

  @Test
  void the_mark_that_some_editors_begin_with_is_left_out() throws Exception {
    Files.writeString(job, "\uFEFFpage");
    assertThat(loader().load("ferry.batten", null).text()).isEqualTo("page");
  }

  @Test
  void a_replacement_character_that_was_written_is_text() throws Exception {
    Files.writeString(job, "a \uFFFD b");
    assertThat(loader().load("ferry.batten", null).text()).isEqualTo("a \uFFFD b");
  }

  @Test
  void bytes_that_are_not_utf_8_are_told_with_their_line() throws IOException {
    Files.write(job, "one\ntwo\r\ncaf\u00e9 au lait".getBytes(StandardCharsets.ISO_8859_1));
    assertThat(refusal(job).message())
        .isEqualTo("'ferry.batten' is not UTF-8 text: line 3 has the byte E9");
  }

  @Test
  void a_character_cut_off_at_the_end_is_not_utf_8() throws IOException {
    Files.write(job, new byte[] {'a', (byte) 0xE2, (byte) 0x89});
    assertThat(refusal(job).message()).endsWith("line 1 has the byte E2");
  }

  @Test
  void bytes_far_into_a_long_file_are_found() throws IOException {
    byte[] bytes = "x\n".repeat(50_000).getBytes(StandardCharsets.UTF_8);
    bytes[80_000] = (byte) 0xFF;
    Files.write(job, bytes);
    assertThat(refusal(job).message()).endsWith("line 40001 has the byte FF");
  }

  @Test
  void other_encodings_and_binary_files_are_told_apart() throws IOException {
    Files.write(job, "page".getBytes(StandardCharsets.UTF_16));
    assertThat(refusal(job).message()).isEqualTo("'ferry.batten' is saved as UTF-16");
    Files.write(job, new byte[] {'P', 'K', 3, 4, 0, 0});
    assertThat(refusal(job).message()).startsWith("'ferry.batten' is not text");
  }

  private Loader loader() {
    return FolderLoader.of(job);
  }

  private SourceText follow(String path) throws Unreadable {
    return loader().load(path, loader().load(job.toString(), null));
  }

  private Unreadable refusalToFollow(String path) {
    return catchThrowableOfType(Unreadable.class, () -> follow(path));
  }

  private static Unreadable refusal(Path file) {
    return catchThrowableOfType(
        Unreadable.class,
        () -> FolderLoader.of(file).load(String.valueOf(file.getFileName()), null));
  }
}
