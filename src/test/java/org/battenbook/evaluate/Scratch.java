package org.battenbook.evaluate;

import org.battenbook.bench.WideBook;
import org.battenbook.workbook.*;

public class Scratch {
  public static void main(String[] a) throws Exception {
    Workbook w = TextLoader.of(WideBook.text(100000)).open();
    Filled f = w.fill();
    for (int k = 0; k < 6; k++) {
      long t = System.nanoTime();
      f = w.fill();
      System.out.println("fill ms " + (System.nanoTime() - t) / 1e6);
    }
    Program p = f.results().program();
    for (int rep = 0; rep < 4; rep++) {
      Evaluator e = new Evaluator(p);
      for (Stage s : p.stages())
        for (Slot slot : s.slots()) {
          long t = System.nanoTime();
          e.run(slot);
          long d = System.nanoTime() - t;
          if (rep == 3) {
            String kind = "";
            if (slot.isColumn()) {
              var c = e.results().column(slot.number()).chunk(0);
              kind =
                  c instanceof LaneChunk l
                      ? l.lane().getClass().getSimpleName()
                      : c.getClass().getSimpleName();
            }
            if (d > 200000)
              System.out.printf("%8.2f ns/row %s %s%n", d / 1e5, slot.place().words(), kind);
          }
        }
    }
  }
}
