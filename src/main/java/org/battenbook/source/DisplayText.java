package org.battenbook.source;

/**
 * Text as a terminal shows it: how many columns it takes, and nothing in it that a terminal would
 * obey rather than show. Workbooks may come from anyone.
 */
public final class DisplayText {
  private static final int CONTROL_PICTURES = 0x2400;
  private static final int REPLACEMENT = 0xFFFD;

  private DisplayText() {}

  /**
   * The text with every control character, line end and direction mark replaced by a character that
   * only shows. A tab becomes a blank.
   */
  public static String safe(String text) {
    if (text.codePoints().noneMatch(DisplayText::isObeyed)) {
      return text;
    }
    StringBuilder shown = new StringBuilder(text.length());
    text.codePoints().map(DisplayText::picture).forEach(shown::appendCodePoint);
    return shown.toString();
  }

  /**
   * The columns that a text takes once it is {@linkplain #safe safe}: none for a combining mark,
   * two for an ideograph.
   */
  public static int width(String text) {
    return text.codePoints().map(DisplayText::width).sum();
  }

  /** Whether what begins at a place is wider; it is looked at no further than that is sure. */
  public static boolean isWider(String text, int start, int width) {
    int wide = 0;
    for (int at = start; at < text.length() && wide <= width; ) {
      int c = text.codePointAt(at);
      wide += width(c);
      at += Character.charCount(c);
    }
    return wide > width;
  }

  /** Whether a terminal acts on a character, or lets it change how others are shown. */
  public static boolean isObeyed(int c) {
    int type = Character.getType(c);
    return type == Character.CONTROL
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR
        || type == Character.SURROGATE
        || isDirection(c);
  }

  /**
   * Marks of direction, and the old ones that change the form of what follows (Unicode, 23.2 and
   * 23.3): they can make one name look like another.
   */
  private static boolean isDirection(int c) {
    return c == 0x061C
        || c == 0x200E
        || c == 0x200F
        || (c >= 0x202A && c <= 0x202E)
        || (c >= 0x2066 && c <= 0x206F);
  }

  private static int picture(int c) {
    if (c == '\t') {
      return ' ';
    }
    if (!isObeyed(c)) {
      return c;
    }
    return c < ' ' ? CONTROL_PICTURES + c : REPLACEMENT;
  }

  private static int width(int c) {
    if (isObeyed(c)) {
      return 1;
    }
    int type = Character.getType(c);
    if (type == Character.NON_SPACING_MARK
        || type == Character.ENCLOSING_MARK
        || type == Character.FORMAT) {
      return 0;
    }
    return Character.isIdeographic(c) || isWideForm(c) ? 2 : 1;
  }

  /** Hangul syllables, kana, full-width forms and pictographs, as in Unicode's annex 11. */
  private static boolean isWideForm(int c) {
    return (c >= 0x1100 && c <= 0x115F)
        || (c >= 0x3000 && c <= 0x30FF)
        || (c >= 0xAC00 && c <= 0xD7A3)
        || (c >= 0xFF01 && c <= 0xFF60)
        || (c >= 0x1F300 && c <= 0x1FAFF);
  }
}
