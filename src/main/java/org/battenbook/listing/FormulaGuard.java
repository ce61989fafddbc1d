package org.battenbook.listing;

/**
 * Keeps a text from being taken for a formula by the program that opens a list: one that begins
 * like a formula gets an apostrophe before it, and loses it when the list is read.
 *
 * <p>Source: OWASP, CSV Injection (the page of the OWASP Foundation's community).
 */
final class FormulaGuard {
  /** With their full-width forms, which some programs take for the same. */
  private static final String BEGIN_FORMULAS = "=+-@\t\r\n＝＋－＠";

  private static final char GUARD = '\'';

  private FormulaGuard() {}

  /** The text as it may stand in a list. */
  static String put(String text) {
    return beginsFormula(text, afterGuards(text)) ? GUARD + text : text;
  }

  /** The text that was put into a list so. */
  static String taken(String written) {
    int guards = afterGuards(written);
    return guards > 0 && beginsFormula(written, guards) ? written.substring(1) : written;
  }

  /** Apostrophes of a text's own are counted in, so that each is given back. */
  private static int afterGuards(String text) {
    int at = 0;
    while (at < text.length() && text.charAt(at) == GUARD) {
      at++;
    }
    return at;
  }

  private static boolean beginsFormula(String text, int at) {
    return at < text.length() && BEGIN_FORMULAS.indexOf(text.charAt(at)) >= 0;
  }
}
