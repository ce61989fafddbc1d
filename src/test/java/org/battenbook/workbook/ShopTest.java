package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.battenbook.book.Loader.Unreadable;
import org.battenbook.saving.ShopFolder;
import org.battenbook.source.SourceText;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a job in a shop may follow, and what those files are called. */
class ShopTest {
  @TempDir Path top;
  private Path shop;
  private Path job;

  @BeforeEach
  void layOutAShop() throws IOException {
    shop = Files.createDirectory(top.toRealPath().resolve("my shop"));
    job = shop.resolve("jobs/2026/gulls.batten");
    Files.createDirectories(job.getParent());
    Files.createDirectories(shop.resolve("lists"));
    Files.writeString(job, "page job\n");
    Files.writeString(shop.resolve(ShopFolder.FILE), "page shop\n");
    Files.writeString(shop.resolve("lists/racks.batten"), "page racks\n");
    Files.writeString(shop.resolve("lists/prices.csv"), "item,price\nglass,3\n");
    Files.writeString(top.resolve("secret.batten"), "secret");
  }

  private SourceText follow(Path from, String path) throws Unreadable {
    FolderLoader loader = FolderLoader.of(from);
    return loader.load(path, loader.load(from.toString(), null));
  }

  private Unreadable refusal(String path) {
    return catchThrowableOfType(Unreadable.class, () -> follow(job, path));
  }

  @Test
  void a_job_follows_the_files_of_its_shop() throws Unreadable {
    assertThat(follow(job, "../../shop.batten").name()).isEqualTo(shop + "/shop.batten");
    assertThat(follow(job, "../../lists/racks.batten").text()).isEqualTo("page racks\n");
    FolderLoader loader = FolderLoader.of(job);
    SourceText from = loader.load(job.toString(), null);
    assertThat(loader.list("../../lists/prices.csv", from, null).name())
        .isEqualTo(shop + "/lists/prices.csv");
  }

  @Test
  void a_file_of_the_shop_follows_others_by_its_own_place() throws Unreadable {
    FolderLoader loader = FolderLoader.of(job);
    SourceText file = loader.load("../../shop.batten", loader.load(job.toString(), null));
    assertThat(loader.load("lists/racks.batten", file).text()).isEqualTo("page racks\n");
    assertThat(loader.load("jobs/2026/gulls.batten", file).name()).isEqualTo(job.toString());
  }

  @Test
  void nothing_outside_the_shop_is_read() throws IOException {
    Files.createSymbolicLink(job.resolveSibling("link.batten"), top.resolve("secret.batten"));
    Files.createSymbolicLink(shop.resolve("up"), top);
    for (String path :
        List.of(
            "../../../secret.batten",
            "link.batten",
            "../../up/secret.batten",
            top.resolve("secret.batten").toString())) {
      assertThat(refusal(path).code()).as(path).isEqualTo("outside-the-folder");
      assertThat(refusal(path).message()).contains("outside the shop, the folder with");
    }
  }

  @Test
  void without_a_shop_a_job_reaches_its_own_folder_only() throws IOException {
    Files.delete(shop.resolve(ShopFolder.FILE));
    Unreadable refusal = refusal("../../lists/racks.batten");
    assertThat(refusal.code()).isEqualTo("outside-the-folder");
    assertThat(refusal.repair()).contains("battenbook start FOLDER");
  }

  @Test
  void a_link_or_a_folder_of_that_name_makes_no_shop() throws IOException {
    Files.delete(shop.resolve(ShopFolder.FILE));
    Files.createSymbolicLink(shop.resolve(ShopFolder.FILE), shop.resolve("lists/racks.batten"));
    assertThat(refusal("../../lists/racks.batten").code()).isEqualTo("outside-the-folder");
    Files.delete(shop.resolve(ShopFolder.FILE));
    Files.createDirectory(shop.resolve(ShopFolder.FILE));
    assertThat(refusal("../../lists/racks.batten").code()).isEqualTo("outside-the-folder");
  }

  @Test
  void the_nearest_shop_counts() throws IOException {
    Files.writeString(shop.resolve("jobs/shop.batten"), "page inner\n");
    assertThat(refusal("../../lists/racks.batten").code()).isEqualTo("outside-the-folder");
    assertThat(ShopFolder.around(shop.resolve("jobs/2026"))).isEqualTo(shop.resolve("jobs"));
  }

  /** The way up from a linked folder is that of the folder itself. */
  @Test
  void a_job_whose_folder_is_a_link_reaches_the_shop_of_the_real_folder() throws Exception {
    Path link = Files.createSymbolicLink(top.resolve("now"), job.getParent());
    SourceText found = follow(link.resolve("gulls.batten"), "../../shop.batten");
    assertThat(found.text()).isEqualTo("page shop\n");
    assertThat(Path.of(found.name()).toRealPath()).isEqualTo(shop.resolve(ShopFolder.FILE));
  }

  @Test
  void a_file_that_is_missing_has_a_cure() {
    assertThat(refusal("../../shops.batten").repair()).isEqualTo("did you mean 'shop.batten'?");
    assertThat(refusal("../../lists/none.batten").repair())
        .isEqualTo("the workbooks in that folder: racks.batten");
    assertThat(refusal("../frame-shop.batten").repair())
        .isEqualTo("write \"standards/frame-shop.batten\" for the file that comes with Battenbook");
  }
}
