package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;
import org.battenbook.export.SpreadsheetExport;
import org.battenbook.source.Diagnostic;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Image files that a job names: their sizes, and what is said of those that have none. */
class PicturesTest {
  private static final String JOB =
      """
      workbook "art"
      follows "standards/artwork.batten"
      page pieces
        rows of pieces
          title    | width | height | image file
          "sharp"  | 12 in | 8 in   | "scans/sharp.png"
          "coarse" | 12 in | 8 in   | "coarse.jpg"
          "named"  | 12 in | 8 in   | "named.gif"
          "noise"  | 12 in | 8 in   | "noise.png"
          "gone"   | 12 in | 8 in   | "gone.png"
          "folder" | 12 in | 8 in   | "scans"
          "out"    | 12 in | 8 in   | "../outside.png"
          "plain"  | 12 in | 8 in   |
      """;

  @TempDir Path folder;
  private Path job = Path.of("");

  @BeforeEach
  void write() throws IOException {
    Path below = folder.resolve("job");
    Files.createDirectories(below.resolve("scans"));
    Files.createDirectories(below.resolve("standards"));
    for (String name : List.of("artwork", "pieces", "allowances", "tolerances")) {
      Files.copy(
          Path.of("workbooks/standards", name + ".batten"),
          below.resolve("standards").resolve(name + ".batten"));
    }
    job = Files.writeString(below.resolve("job.batten"), JOB);
    image("png", 2400, 1600, below.resolve("scans/sharp.png"));
    image("jpg", 1200, 800, below.resolve("coarse.jpg"));
    image("png", 1800, 1200, below.resolve("named.gif"));
    image("png", 30, 20, folder.resolve("outside.png"));
    byte[] noise = new byte[10_000_000];
    new Random(11).nextBytes(noise);
    Files.write(below.resolve("noise.png"), noise);
  }

  private static void image(String format, int across, int down, Path file) throws IOException {
    BufferedImage image = new BufferedImage(across, down, BufferedImage.TYPE_BYTE_GRAY);
    ImageIO.write(image, format, file.toFile());
  }

  private Filled filled() throws Exception {
    Workbook workbook = Workbook.open(job.toString());
    assertThat(workbook.hasFaults()).as(workbook.diagnostics().toString()).isFalse();
    return workbook.fill();
  }

  @Test
  void a_piece_has_the_pixels_of_its_file_whatever_its_ending_says() throws Exception {
    Filled filled = filled();
    assertThat(filled.find("image across of sharp").exact()).isEqualTo("2400");
    assertThat(filled.find("image down of coarse").exact()).isEqualTo("800");
    assertThat(filled.find("image across of named").exact()).isEqualTo("1800");
    assertThat(filled.find("resolution across of sharp").exact()).isEqualTo("200");
  }

  @Test
  void too_few_pixels_to_an_inch_are_told_with_their_numbers() throws Exception {
    assertThat(filled().requirements())
        .filteredOn(Verdict::isNo)
        .extracting(Verdict::text)
        .containsExactly(
            "coarse: an image of 1200 x 800 pixels on 12 in x 8 in gives 100 x 100 pixels per"
                + " inch; minimum 150. Use a larger image or a smaller print.");
  }

  @Test
  void a_file_that_is_no_image_is_a_caution_at_its_name() throws Exception {
    Filled filled = filled();
    assertThat(filled.pictureCautions())
        .allMatch(caution -> !caution.isFault())
        .extracting(Diagnostic::code)
        .containsExactly("no-picture", "no-such-file", "not-a-file", "outside-the-folder");
    assertThat(filled.pictureCautions().get(0).span().text()).isEqualTo("\"noise.png\"");
    assertThat(filled.find("image across of noise").exact()).isEqualTo("0");
    assertThat(filled.faults()).isEmpty();
  }

  @Test
  void a_spreadsheet_takes_counted_pixels_for_given() throws Exception {
    assertThat(SpreadsheetExport.write(filled(), new ByteArrayOutputStream())).isEmpty();
  }
}
