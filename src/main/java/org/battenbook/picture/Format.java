package org.battenbook.picture;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A kind of image file: how it begins, and where it states its size. */
record Format(String signature, Reader reader) {
  private static final List<Format> KNOWN =
      List.of(
          new Format(Png.SIGNATURE, Png::size),
          new Format(Jpeg.SIGNATURE, Jpeg::size),
          new Format("GIF87a", Gif::size),
          new Format("GIF89a", Gif::size),
          new Format("BM", Bmp::size),
          new Format("II", Tiff::size),
          new Format("MM", Tiff::size),
          new Format("RIFF", WebP::size));

  /** Reads the size; a read past the end of the bytes may throw as the buffer does. */
  interface Reader {
    PictureSize size(ByteBuffer head) throws NoPicture;
  }

  /** The format of a file that begins with these bytes. */
  static Format of(byte[] head) throws NoPicture {
    for (Format format : KNOWN) {
      if (isAt(ByteBuffer.wrap(head), 0, format.signature)) {
        return format;
      }
    }
    throw new NoPicture("is not read as an image: PNG, JPEG, GIF, BMP, TIFF and WebP are");
  }

  PictureSize size(ByteBuffer head) throws NoPicture {
    return reader.size(head);
  }

  /** Whether these characters, a byte each, are at a position. */
  static boolean isAt(ByteBuffer bytes, int position, String characters) {
    byte[] expected = characters.getBytes(StandardCharsets.ISO_8859_1);
    return expected.length <= bytes.limit() - position
        && bytes.slice(position, expected.length).equals(ByteBuffer.wrap(expected));
  }
}
