package org.battenbook.keep;

/**
 * A page {@code wood} of tables without rows, and a plan that cuts slats out of new laths and out
 * of a rack and keeps what is left there. There is no kerf. Once the job remembers that it took
 * some stock, it needs no more slats.
 */
public final class SlatShop {
  public static final String TABLES =
      """
      page wood
        table rack by lath
          given
            lath    : text
            wood    : text = "ash"
            length  : length
            on hand : count = 1
            offcut  : yes or no = false
        table taken by lath
          given
            lath   : text
            length : length
            bought : count
            stored : count = 0
        table slats by slat
          given
            slat  : text
            long  : length
            asked : count
          worked out
            needed = if (count of taken) > 0 then 0 else asked
            wood   = "ash"
        table shop by sort
          given
            sort   : text
            length : length
        table stock by sort
          for each sold of shop
            wood    = "ash"
            length  = sold.length
            on hand = 0
            more    = true
            old     = false
          for each lath of rack
            wood    = lath.wood
            length  = lath.length
            on hand = lath.on hand
            more    = false
            old     = lath.offcut
          given
            wood    : text
            length  : length
            on hand : count
            more    : yes or no
            old     : yes or no
          worked out
            least = 8 in
        stick plan slat
          parts of slats
            length   = long
            quantity = needed
            material = wood
          stock of stock
            length         = length
            material       = wood
            on hand        = on hand
            can buy more   = more
            offcut         = old
            minimum offcut = least
          keep in rack
            length   = length
            material = wood
            on hand  = on hand
            offcut   = offcut
          record in taken
            length     = length
            bought     = bought
            from stock = stored
      """;

  private SlatShop() {}
}
