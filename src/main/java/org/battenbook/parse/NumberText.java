package org.battenbook.parse;

import org.battenbook.number.Rational;

/**
 * Numbers as they are written at the bench: {@code 15 3/8}, {@code 15-3/8}, {@code 15½}, {@code
 * 15.5}.
 */
final class NumberText {
  private static final String VULGAR = "½¼¾⅛⅜⅝⅞⅓⅔⅙⅚⅕⅖⅗⅘";
  private static final String[] SPELLED = {
    "1/2", "1/4", "3/4", "1/8", "3/8", "5/8", "7/8", "1/3", "2/3", "1/6", "5/6", "1/5", "2/5",
    "3/5", "4/5"
  };

  private NumberText() {}

  /** The number of a token, a mark for feet or inches behind it left aside. */
  static Rational read(String written) {
    StringBuilder plain = new StringBuilder();
    for (int i = 0; i < written.length(); i++) {
      char c = written.charAt(i);
      if (isVulgar(c)) {
        plain.append(' ').append(SPELLED[VULGAR.indexOf(c)]);
      } else if (c == '/' || c == '⁄') {
        plain.append('/');
      } else if (c == '.' || (c >= '0' && c <= '9')) {
        plain.append(c);
      } else {
        plain.append(' ');
      }
    }
    return Rational.parse(Spaces.single(plain.toString().strip()));
  }

  static boolean isVulgar(char c) {
    return VULGAR.indexOf(c) >= 0;
  }
}
