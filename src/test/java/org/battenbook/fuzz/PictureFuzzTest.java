package org.battenbook.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.battenbook.picture.NoPicture;
import org.battenbook.picture.PictureSize;
import org.junit.jupiter.params.provider.MethodSource;

/** An image file tells its size, or that it is none. */
class PictureFuzzTest {
  static Stream<byte[]> seeds() throws IOException {
    List<byte[]> images = new ArrayList<>();
    for (String format : List.of("png", "jpg", "gif", "bmp", "tif")) {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      ImageIO.write(new BufferedImage(7, 5, BufferedImage.TYPE_INT_RGB), format, out);
      images.add(out.toByteArray());
    }
    return images.stream();
  }

  @MethodSource("seeds")
  @FuzzTest
  void picture(byte[] input) {
    Bounds.check(() -> size(input));
  }

  private static void size(byte[] image) {
    try {
      PictureSize size = PictureSize.read(image);
      if (size.across() <= 0 || size.down() <= 0) {
        throw new AssertionError("an image without extent: " + size);
      }
    } catch (NoPicture none) {
      if (none.message().isBlank()) {
        throw new AssertionError("says nothing", none);
      }
    }
  }
}
