package org.battenbook.picture;

/** Thrown when bytes are not the beginning of an image file, or do not say how large it is. */
public final class NoPicture extends Exception {
  NoPicture(String message) {
    super(message);
  }

  public String message() {
    return String.valueOf(getMessage());
  }
}
