package org.battenbook.bench;

import java.util.Random;

/**
 * The workload <em>wide book</em>: pieces with 30 calculated columns, 20 allowances and 10 totals,
 * measured half in inches and half in millimeters. The same number of pieces gives the same text.
 */
public final class WideBook {
  private static final long SEED = 20261125;
  private static final String STANDARDS =
      """
      workbook "Wide book"
      currency USD
      page allowances
        fitting allowance = 1/8 in
        mat overlap = 1/4 in
        rail step = 1/16 in
        window step = 1/16 in
        glass step = 1/16 in
        glass clearance = 1/8 in
        dust cover inset = 1/8 in
        saw kerf = 1/8 in
        end trim = 1/2 in
        top weight = 0 in
        bottom weight = 1/2 in
        cleat inset = 1/2 in
        cleat play = 2 in
        glass thickness = 2.5 mm
        glass density = 2500 kg/m^3
        board density = 700 kg/m^3
        board thickness = 4 mm
        glass price = 9 USD/ft^2
        joint price = 2.25 USD
        waste percent = 15 %
      page mouldings
        table mouldings by name
          given
            name : text
            face : length
            lip : length
            price : money / length
        rows of mouldings
          name | face | lip | price
          "ash cap" | 38 mm | 6 mm | 4.25 USD/ft
          "oak flat" | 1 1/2 in | 1/4 in | 5.10 USD/ft
          "maple" | 30 mm | 5 mm | 14.60 USD/m
          "walnut" | 2 in | 5/16 in | 8.40 USD/ft
      page pieces
        table pieces by title
          given
            title : text
            width : length
            height : length
            quantity : count = 1
            moulding : row of mouldings
            border : length = 2 in
          worked out
            window width = width - 2 * mat overlap
            window height = height - 2 * mat overlap
            window width as cut = window width rounded down to window step
            window height as cut = window height rounded down to window step
            mat width = window width + 2 * border
            mat height = window height + 2 * border + top weight + bottom weight
            rabbet width = mat width + fitting allowance
            rabbet height = mat height + fitting allowance
            cover = moulding.face - moulding.lip
            top rail = rabbet width + 2 * cover rounded up to rail step
            side rail = rabbet height + 2 * cover rounded up to rail step
            rabbet width as cut = top rail - 2 * cover
            rabbet height as cut = side rail - 2 * cover
            sight width = rabbet width as cut - 2 * moulding.lip
            sight height = rabbet height as cut - 2 * moulding.lip
            glazing width = rabbet width as cut - glass clearance rounded down to glass step
            glazing height = rabbet height as cut - glass clearance rounded down to glass step
            dust cover width = top rail - 2 * dust cover inset
            dust cover height = side rail - 2 * dust cover inset
            cleat length = top rail - 2 * cover - cleat play
            upright = side rail >= top rail
            longest = if upright then side rail else top rail
            stick used = (2 * (top rail + side rail) + 4 * saw kerf) * quantity
            glazing area = glazing width * glazing height
            mat area = mat width * mat height
            glass mass = glazing area * glass thickness * glass density
            board mass = mat area * board thickness * board density
            moulding cost = stick used * moulding.price * (1 + waste percent)
            glass cost = glazing area * glass price * quantity
            price = (moulding cost + glass cost + 4 * joint price * quantity) rounded to minor unit
        lines
          total pieces = sum of quantity over pieces
          total sticks = sum of stick used over pieces
          total glass = sum of glazing area * quantity over pieces
          total board = sum of mat area * quantity over pieces
          total mass = sum of (glass mass + board mass) * quantity over pieces
          total cost = sum of price over pieces
          longest rail = largest of longest over pieces
          smallest glazing = smallest of glazing area over pieces
          upright ones = count of pieces where upright
          walnut ones = sum of quantity over pieces where moulding = "walnut"
        rows of pieces
          title | width | height | quantity | moulding | border
      """;
  private static final String[] MOULDINGS = {"ash cap", "oak flat", "maple", "walnut"};

  /** How many columns are calculated. */
  public static final int WORKED_OUT = 30;

  private WideBook() {}

  /** The workbook's text for so many pieces. */
  public static String text(int pieces) {
    Random random = new Random(SEED);
    StringBuilder text = new StringBuilder(STANDARDS.length() + 70 * pieces).append(STANDARDS);
    for (int i = 0; i < pieces; i++) {
      text.append("    \"Piece ").append(i).append("\" | ");
      side(random, text);
      text.append(" | ");
      side(random, text);
      text.append(" | ").append(1 + random.nextInt(6)).append(" | \"");
      text.append(MOULDINGS[random.nextInt(MOULDINGS.length)]).append("\" | ");
      text.append(random.nextBoolean() ? "" : "2 3/4 in").append('\n');
    }
    return text.toString();
  }

  /** A side between 4 and 36 inches: in sixteenths of an inch, or in whole millimeters. */
  private static void side(Random random, StringBuilder text) {
    if (random.nextBoolean()) {
      int sixteenths = 64 + random.nextInt(512);
      text.append(sixteenths / 16).append(' ').append(1 + 2 * random.nextInt(8)).append("/16 in");
    } else {
      text.append(100 + random.nextInt(800)).append(" mm");
    }
  }
}
