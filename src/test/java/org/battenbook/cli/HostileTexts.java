package org.battenbook.cli;

/** Workbooks whose texts, names and notes hold what a terminal obeys. */
public final class HostileTexts {
  /** Colors, a window title, a bell, a clearing of the screen, turned directions, line breaks. */
  public static final String TEXT =
      "x\u001b[31m\u001b]0;owned\u0007\u009b2J\u202e\u2066\u007f\u200e\u200f\u061c\u2028\u2029y";

  /** The name of the list that the job takes rows from. */
  public static final String LIST = "list" + TEXT + ".csv";

  /** Can be filled. It takes rows from {@link #LIST} and from list.xlsx. */
  public static final String JOB =
      """
      workbook "Ferry HOSTILE"
      page p "Page HOSTILE" -- a note HOSTILE
        table t by name
          given
            name : text
            width : length
          worked out
            twice = width * 2 -- a note HOSTILE
        rows of t
          name         | width
          "r HOSTILE"  | 3 in ± 1/16 in
          "s HOSTILE"  | 1/3 in
        table u by name
          given
            name : text
            width : length
        rows of u from "list HOSTILE.csv"
        table v by name
          given
            name : text
            width : length
        rows of v from "list.xlsx"
        said = "words HOSTILE"
        all = sum of twice over t
        open : length
        spare = open + all -- note HOSTILE
        require all > 100 in
          else "Too little HOSTILE {said}."
        caution when all > 0 in
          say "Beware HOSTILE."
      change said = "other HOSTILE" because "reason HOSTILE"
      """
          .replace("list HOSTILE", "listHOSTILE")
          .replace("HOSTILE", TEXT);

  /** Is at fault in many places. */
  public static final String BROKEN =
      """
      workbook "Ferry HOSTILE"
      page p "Page HOSTILE"
        a = "HOSTILE" + 1 in
        bHOSTILE = 1 in
        table u by name
          given
            name : text
            width : length
        rows of u from "listHOSTILE.cvs"
        rows of u
          name | wdith HOSTILE
          "HOSTILE" | "HOSTILE"
        c = width of u "HOSTILE"
      """
          .replace("HOSTILE", TEXT);

  /** Follows files that are not there, or another edition of one that is. */
  public static final String ALONE =
      """
      workbook "Ferry HOSTILE" edition "HOSTILE"
      follows "noneHOSTILE.batten"
      follows "standards/HOSTILE.batten"
      follows "../HOSTILE.batten"
      follows "standards/frame-shop.batten" edition "HOSTILE"
      """
          .replace("HOSTILE", TEXT);

  /** Has a plan, one part of which comes out of no stick. */
  public static final String PLANS =
      """
      workbook "Plans HOSTILE"
      page p
        table parts by name
          given
            name : text
            moulding : text
            cut : length
            many : number
        rows of parts
          name          | moulding      | cut   | many
          "top HOSTILE" | "ash HOSTILE" | 20 in | 2
          "far HOSTILE" | "oak HOSTILE" | 99 ft | 1
        table rack by name
          given
            name : text
            moulding : text
            long : length
            on hand : number
        rows of rack
          name            | moulding      | long | on hand
          "stick HOSTILE" | "ash HOSTILE" | 8 ft | 3
      stick plan rail
        parts of parts
          material = moulding
          length = cut
          quantity = many
        stock of rack
          material = moulding
          length = long
          on hand = on hand
      """
          .replace("HOSTILE", TEXT);

  private HostileTexts() {}
}
