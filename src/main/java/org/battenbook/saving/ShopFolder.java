package org.battenbook.saving;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/** The folder of a shop, whose files each job in it may use. */
public final class ShopFolder {
  /** The workbook that makes a folder a shop. */
  public static final String FILE = "shop.batten";

  private ShopFolder() {}

  /**
   * The folder whose files a job may use: the nearest one from its own upward that is a shop, else
   * its own. A link does not make a folder a shop.
   *
   * @param folder the folder of the job, without links
   */
  public static Path around(Path folder) {
    for (Path at = folder; at != null; at = at.getParent()) {
      if (isShop(at)) {
        return at;
      }
    }
    return folder;
  }

  /** Whether a folder holds {@link #FILE}. */
  public static boolean isShop(Path folder) {
    return Files.isRegularFile(folder.resolve(FILE), LinkOption.NOFOLLOW_LINKS);
  }
}
