package org.battenbook.workbook;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A small job at random, with the standards it follows, that reads without faults. The same seed
 * gives the same texts.
 */
public final class RandomWorkbook {
  /** What a job may have. */
  public enum Feature {
    CHANGE,
    CHANGE_WITH_OWN_NAME,
    CHANGE_OF_A_CELL,
    CHANGE_IN_TWO_FILES,
    FILLED_BY_THE_JOB,
    TOTAL,
    NESTED_TOTAL,
    WHERE,
    GROUP,
    SELECTION,
    LOOK_UP,
    TWO_DOTS,
    ROW_ABOVE,
    ROUNDING,
    FUNCTION,
    TOLERANCE,
    TOLERANCE_OF_A_CELL,
    AT_WORST,
    OPENED,
    OPENED_BY_WORKED_OUT_COUNT,
    OPENED_FROM_OPENED,
    OPENED_FROM_SEVERAL,
    FILLED_IN_ROW,
    FORMULA_IN_A_CELL,
    EMPTY_CELL,
    FILLED_BY_HAND,
    SHOWN_AS,
    LENGTHS_IN,
    REQUIREMENT,
    CAUTION,
    COLUMN_OF_THE_JOB,
    PLAN
  }

  /**
   * An edit that a person might make; one in eight is wrong.
   *
   * @param name the line or the column
   * @param table whose column it is; empty for a line
   * @param row the row whose cell is edited; absent where the formula is
   * @param text what is written there; empty to empty a cell
   */
  public record Candidate(String name, String table, @Nullable String row, String text) {}

  private final RandomSections sections;
  private final Map<String, String> texts = new LinkedHashMap<>();

  private RandomWorkbook(long seed, boolean hasPlan) {
    this.sections = new RandomSections(new Random(seed), hasPlan);
    List<String> files = sections.files();
    for (int i = 0; i < files.size(); i++) {
      texts.put(RandomSections.fileName(i, i == files.size() - 1), files.get(i));
    }
  }

  /** The job of a seed. */
  public static RandomWorkbook of(long seed) {
    return new RandomWorkbook(seed, false);
  }

  /** The job of a seed, with a stick plan of rows that it opens. */
  public static RandomWorkbook withPlan(long seed) {
    return new RandomWorkbook(seed, true);
  }

  /** The texts by the names of their files; the job is {@code job.batten}. */
  public Map<String, String> texts() {
    return texts;
  }

  /** What it has. */
  public Set<Feature> features() {
    return EnumSet.copyOf(sections.features());
  }

  public TextLoader loader() {
    TextLoader loader = new TextLoader();
    texts.forEach(loader::with);
    return loader;
  }

  public Workbook open() {
    return loader().open();
  }

  /** An edit of it, also after others that this gave. */
  public Candidate edit(Random random) {
    return new RandomEdits(sections, random).edit();
  }

  @Override
  public String toString() {
    StringBuilder all = new StringBuilder();
    texts.forEach((name, text) -> all.append("-- %s%n%s%n".formatted(name, text)));
    return all.toString();
  }
}
