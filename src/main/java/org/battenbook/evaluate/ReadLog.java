package org.battenbook.evaluate;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.Set;
import org.battenbook.bind.Spot;
import org.battenbook.book.Table;

/**
 * Records what one run of a formula read. Of the rows that a total goes over it lists those that
 * count, and of the rows that a selection goes over the chosen one. It always lists what rows are
 * compared with.
 */
public final class ReadLog implements Watch {
  /** The most rows of a total that are listed one by one. */
  public static final int MOST_ROWS = 24;

  private final Level whole = new Level(true);
  private final Deque<Level> levels = new ArrayDeque<>();
  private final Set<Spot> inherited = new LinkedHashSet<>();
  private final Set<Table> inheritedTables = new LinkedHashSet<>();
  private boolean readsInherited;

  /** What is read in one row, or outside of all rows. */
  private static final class Level {
    final Set<Spot> taken = new LinkedHashSet<>();
    final Set<Spot> compared = new LinkedHashSet<>();
    final Set<Spot> around = new LinkedHashSet<>();

    /** What the rows past {@link #MOST_ROWS} read. */
    final Set<Spot> further = new LinkedHashSet<>();

    final Set<Table> tables = new LinkedHashSet<>();
    boolean counts;
    int rowsTold;
    int rowsLeftOut;

    Level(boolean counts) {
      this.counts = counts;
    }

    void add(Spot spot, boolean isAround) {
      (counts ? taken : compared).add(spot);
      if (isAround) {
        around.add(spot);
      }
    }

    /** Adds what one row of a total read. */
    void add(Level row) {
      tables.addAll(row.tables);
      if (!row.counts) {
        row.around.forEach(this::add);
      } else if (rowsTold == MOST_ROWS) {
        rowsLeftOut++;
        further.addAll(row.all());
      } else {
        rowsTold++;
        row.taken.forEach(this::add);
        row.compared.forEach(this::add);
        further.addAll(row.further);
      }
    }

    private void add(Spot spot) {
      add(spot, spot.place().table() == null);
    }

    Set<Spot> all() {
      Set<Spot> all = new LinkedHashSet<>(taken);
      all.addAll(compared);
      all.addAll(further);
      return all;
    }
  }

  ReadLog() {
    levels.push(whole);
  }

  /** The values that are listed one by one, each once, in the order of reading. */
  public Set<Spot> told() {
    return whole.taken;
  }

  /**
   * All values that were read, with those of an inherited formula and of rows that are not listed.
   */
  public Set<Spot> all() {
    Set<Spot> all = whole.all();
    all.addAll(inherited);
    return all;
  }

  /** The tables whose rows it went over. */
  public Set<Table> tables() {
    return whole.tables;
  }

  /** The same, with those of an inherited formula. */
  public Set<Table> allTables() {
    Set<Table> all = new LinkedHashSet<>(whole.tables);
    all.addAll(inheritedTables);
    return all;
  }

  /** Whether it read the value that its place had before a change. */
  public boolean readsInherited() {
    return readsInherited;
  }

  /** How many rows that count are not listed. */
  public int rowsLeftOut() {
    return whole.rowsLeftOut;
  }

  @Override
  public void read(Spot spot, boolean isAround) {
    levels.getFirst().add(spot, isAround);
  }

  @Override
  public void overRows(Table table) {
    Level level = levels.getFirst();
    level.tables.add(table);
    level.rowsTold = 0;
  }

  @Override
  public void rowBegins() {
    levels.push(new Level(false));
  }

  @Override
  public void rowCounts() {
    levels.getFirst().counts = true;
  }

  @Override
  public void rowEnds() {
    Level row = levels.pop();
    levels.getFirst().add(row);
  }

  @Override
  public void inheritedBegins() {
    readsInherited = true;
    levels.push(new Level(true));
  }

  @Override
  public void inheritedEnds() {
    Level replaced = levels.pop();
    inherited.addAll(replaced.all());
    inheritedTables.addAll(replaced.tables);
  }
}
