package org.battenbook.picture;

/** That bytes do not begin as an image file of a known kind does, for people. */
public final class NoPicture extends Exception {
  NoPicture(String message) {
    super(message);
  }

  public String message() {
    return String.valueOf(getMessage());
  }
}
