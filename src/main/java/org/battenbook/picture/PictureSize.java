package org.battenbook.picture;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.bmp.BmpHeaderDirectory;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.gif.GifHeaderDirectory;
import com.drew.metadata.jpeg.JpegDirectory;
import com.drew.metadata.png.PngDirectory;
import com.drew.metadata.webp.WebpDirectory;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;

/**
 * How many pixels an image has across and down, as it is seen: one that a camera turned by a mark
 * in its file counts as turned.
 */
public record PictureSize(int across, int down) {
  /** Which tags of which part of a file tell its size; the first that is there counts. */
  private record Tags(Class<? extends Directory> part, int across, int down) {}

  private static final List<Tags> KNOWN =
      List.of(
          new Tags(
              JpegDirectory.class, JpegDirectory.TAG_IMAGE_WIDTH, JpegDirectory.TAG_IMAGE_HEIGHT),
          new Tags(PngDirectory.class, PngDirectory.TAG_IMAGE_WIDTH, PngDirectory.TAG_IMAGE_HEIGHT),
          new Tags(
              GifHeaderDirectory.class,
              GifHeaderDirectory.TAG_IMAGE_WIDTH,
              GifHeaderDirectory.TAG_IMAGE_HEIGHT),
          new Tags(
              BmpHeaderDirectory.class,
              BmpHeaderDirectory.TAG_IMAGE_WIDTH,
              BmpHeaderDirectory.TAG_IMAGE_HEIGHT),
          new Tags(
              WebpDirectory.class, WebpDirectory.TAG_IMAGE_WIDTH, WebpDirectory.TAG_IMAGE_HEIGHT),
          new Tags(
              ExifIFD0Directory.class,
              ExifIFD0Directory.TAG_IMAGE_WIDTH,
              ExifIFD0Directory.TAG_IMAGE_HEIGHT));

  /** From here on the marks of orientation say that across and down are exchanged. */
  private static final int FIRST_TURNED = 5;

  /**
   * Reads the size of an image: PNG, JPEG, GIF, BMP, TIFF or WebP.
   *
   * @param head the first bytes of its file, or all of them
   * @throws NoPicture where they tell none
   */
  public static PictureSize read(byte[] head) throws NoPicture {
    Metadata metadata = metadata(PngHead.of(head));
    for (Tags tags : KNOWN) {
      for (Directory part : metadata.getDirectoriesOfType(tags.part())) {
        Integer across = part.getInteger(tags.across());
        Integer down = part.getInteger(tags.down());
        // The lowest whole number has no opposite, and no image is that high.
        if (across != null && down != null && across > 0 && Math.abs(down) > 0) {
          return seen(across, Math.abs(down), metadata);
        }
      }
    }
    throw new NoPicture("is not read as an image, or tells no size at its beginning");
  }

  private static PictureSize seen(int across, int down, Metadata metadata) {
    for (ExifIFD0Directory exif : metadata.getDirectoriesOfType(ExifIFD0Directory.class)) {
      Integer orientation = exif.getInteger(ExifIFD0Directory.TAG_ORIENTATION);
      if (orientation != null && orientation >= FIRST_TURNED) {
        return new PictureSize(down, across);
      }
    }
    return new PictureSize(across, down);
  }

  private static Metadata metadata(byte[] head) throws NoPicture {
    try {
      return ImageMetadataReader.readMetadata(new ByteArrayInputStream(head), head.length);
    } catch (ImageProcessingException | IOException | RuntimeException none) {
      throw new NoPicture("is not read as an image: PNG, JPEG, GIF, BMP, TIFF and WebP are");
    }
  }
}
