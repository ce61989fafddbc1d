package org.battenbook.picture;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.Random;
import javax.imageio.ImageIO;
import org.battenbook.bound.Bound;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sizes of images that the JDK's own writers made, and of bytes that are none. */
class PictureSizeTest {

  private static byte[] image(String format, int across, int down) throws IOException {
    BufferedImage image = new BufferedImage(across, down, BufferedImage.TYPE_INT_RGB);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertThat(ImageIO.write(image, format, out)).isTrue();
    return out.toByteArray();
  }

  @ParameterizedTest
  @ValueSource(strings = {"png", "jpg", "gif", "bmp", "tif"})
  void a_written_image_has_the_size_it_was_written_with(String format) throws Exception {
    assertThat(PictureSize.read(image(format, 123, 45))).isEqualTo(new PictureSize(123, 45));
  }

  /** Exif 2.32: orientation 6 is turned by a quarter, 3 by a half. */
  @Test
  void an_image_counts_as_it_is_seen() throws Exception {
    assertThat(PictureSize.read(turned(6))).isEqualTo(new PictureSize(45, 123));
    assertThat(PictureSize.read(turned(3))).isEqualTo(new PictureSize(123, 45));
  }

  /** A JPEG with an Exif segment of one entry behind its first two bytes. */
  private static byte[] turned(int orientation) throws IOException {
    byte[] plain = image("jpg", 123, 45);
    ByteBuffer exif = ByteBuffer.allocate(36);
    exif.putShort((short) 0xffe1).putShort((short) 34);
    exif.put(new byte[] {'E', 'x', 'i', 'f', 0, 0, 'M', 'M'}).putShort((short) 42).putInt(8);
    exif.putShort((short) 1).putShort((short) 0x112).putShort((short) 3).putInt(1);
    exif.putShort((short) orientation).putShort((short) 0).putInt(0);
    ByteBuffer whole = ByteBuffer.allocate(plain.length + 36);
    return whole.put(plain, 0, 2).put(exif.array()).put(plain, 2, plain.length - 2).array();
  }

  /**
   * WebP container specification (RFC 9649): the size less one, in 14 bits each behind the mark of
   * a lossless image, in 24 bits each in the extended header; of a lossy image the size itself.
   */
  @Test
  void a_webp_file_has_the_size_that_its_header_says() throws Exception {
    long lossless = 122 | 44 << 14;
    byte[] bits = ByteBuffer.allocate(8).order(ByteOrder.LITTLE_ENDIAN).putLong(lossless).array();
    byte[] simple = {0x2f, bits[0], bits[1], bits[2], bits[3], 0, 0, 0, 0, 0};
    assertThat(PictureSize.read(webp("VP8L", simple))).isEqualTo(new PictureSize(123, 45));
    byte[] extended = {0, 0, 0, 0, 122, 0, 0, 44, 0, 0};
    assertThat(PictureSize.read(webp("VP8X", extended))).isEqualTo(new PictureSize(123, 45));
    byte[] lossy = {0, 0, 0, (byte) 0x9d, 1, 0x2a, 123, 0, 45, 0};
    assertThat(PictureSize.read(webp("VP8 ", lossy))).isEqualTo(new PictureSize(123, 45));
  }

  /** A RIFF file of the form WEBP with one chunk. */
  private static byte[] webp(String chunk, byte[] data) {
    ByteBuffer file = ByteBuffer.allocate(20 + data.length).order(ByteOrder.LITTLE_ENDIAN);
    file.put("RIFF".getBytes(US_ASCII)).putInt(12 + data.length).put("WEBP".getBytes(US_ASCII));
    return file.put(chunk.getBytes(US_ASCII)).putInt(data.length).put(data).array();
  }

  @Test
  void the_first_bytes_of_a_large_image_are_enough() throws Exception {
    byte[] whole = image("png", 900, 700);
    assertThat(PictureSize.read(Arrays.copyOf(whole, 60))).isEqualTo(new PictureSize(900, 700));
  }

  @ParameterizedTest
  @ValueSource(strings = {"png", "jpg", "gif", "bmp", "tif"})
  void a_head_cut_short_tells_no_size(String format) throws Exception {
    byte[] head = Arrays.copyOf(image(format, 123, 45), 9);
    assertThatThrownBy(() -> PictureSize.read(head)).isInstanceOf(NoPicture.class);
  }

  @Test
  void a_chunk_that_says_it_is_huge_takes_no_memory() throws Exception {
    ByteBuffer png = ByteBuffer.wrap(image("png", 123, 45));
    png.putInt(33, Integer.MAX_VALUE);
    assertThat(PictureSize.read(png.array())).isEqualTo(new PictureSize(123, 45));
  }

  @ParameterizedTest
  @ValueSource(strings = {"zTXt", "iTXt", "iCCP"})
  void chunks_of_a_png_that_are_damaged_and_no_matter_are_passed_over(String kind)
      throws Exception {
    byte[] plain = image("png", 123, 45);
    ImageBytes damaged = new ImageBytes(ByteOrder.BIG_ENDIAN).ints(4).text(kind).ints(-1, -1);
    assertThat(PictureSize.read(withChunk(plain, damaged))).isEqualTo(new PictureSize(123, 45));
  }

  /** PNG, third edition, 11.3.4.5: what a camera wrote is a TIFF file in a chunk of its own. */
  @Test
  void a_png_image_counts_as_it_is_seen() throws Exception {
    ImageBytes exif =
        new ImageBytes(ByteOrder.BIG_ENDIAN)
            .ints(26)
            .text("eXIfMM")
            .shorts(42, 0, 8, 1, 0x112, 3, 0, 1, 6, 0, 0, 0)
            .ints(0);
    assertThat(PictureSize.read(withChunk(image("png", 123, 45), exif)))
        .isEqualTo(new PictureSize(45, 123));
  }

  /** A PNG file with a chunk behind its header. */
  private static byte[] withChunk(byte[] png, ImageBytes chunk) {
    int header = 33;
    ImageBytes whole = new ImageBytes(ByteOrder.BIG_ENDIAN, png);
    byte[] rest = Arrays.copyOfRange(png, header, png.length);
    return whole.cut(header).then(chunk).then(new ImageBytes(ByteOrder.BIG_ENDIAN, rest)).all();
  }

  /** The oldest header of a BMP file has its numbers in 16 bits. */
  @Test
  void a_bmp_file_of_the_oldest_kind_has_its_size() throws Exception {
    ImageBytes bmp =
        new ImageBytes(ByteOrder.LITTLE_ENDIAN).text("BM").ints(0, 0, 0, 12).shorts(123, 45, 1, 24);
    assertThat(PictureSize.read(bmp.all())).isEqualTo(new PictureSize(123, 45));
  }

  @Test
  void noise_and_nothing_are_no_image() {
    long seed = 2026;
    byte[] noise = new byte[10_000_000];
    new Random(seed).nextBytes(noise);
    assertThatThrownBy(() -> PictureSize.read(Arrays.copyOf(noise, Bound.IMAGE_HEAD.mostBytes())))
        .as("seed %d", seed)
        .isInstanceOf(NoPicture.class);
    assertThatThrownBy(() -> PictureSize.read(new byte[0])).isInstanceOf(NoPicture.class);
  }

  /** Each byte of a short file is made another: a size or a message, never anything else. */
  @Test
  void damaged_files_never_do_worse_than_tell_no_size() throws Exception {
    long seed = 7;
    Random random = new Random(seed);
    for (String format : new String[] {"png", "jpg", "gif", "bmp", "tif"}) {
      byte[] whole = image(format, 30, 20);
      for (int i = 0; i < 200; i++) {
        byte[] damaged = whole.clone();
        damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
        try {
          assertThat(PictureSize.read(damaged).across()).as("seed %d", seed).isPositive();
        } catch (NoPicture told) {
          assertThat(told.message()).isNotBlank();
        }
      }
    }
  }
}
