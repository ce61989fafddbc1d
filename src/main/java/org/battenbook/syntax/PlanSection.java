package org.battenbook.syntax;

import java.util.List;
import org.battenbook.source.Span;
import org.jspecify.annotations.Nullable;

/**
 * {@code stick plan rail} or {@code sheet plan lite}: which parts to cut from what. Its own lines
 * set how it is planned; {@code parts of}, {@code stock of}, {@code keep in} and {@code record in}
 * name tables, and which of their columns says what.
 *
 * @param settings such as {@code planning time = 10 s}
 * @param keep the table that offcuts are written into; absent where none is
 * @param record the table that what was taken is written into; absent where none is
 */
public record PlanSection(
    Cutting cutting,
    Name name,
    List<LineDefinition> settings,
    Source parts,
    Source stock,
    @Nullable Source keep,
    @Nullable Source record,
    String note,
    Span span)
    implements PageItem {

  /** What is cut. */
  public enum Cutting {
    /** Lengths out of sticks. */
    STICKS,
    /** Rectangles out of sheets, each cut right across. */
    SHEETS
  }

  /** A table, and what its columns say. */
  public record Source(Name table, List<Role> roles) {
    public Source {
      roles = List.copyOf(roles);
    }
  }

  /** {@code length = long point}: a column that says something that a plan needs to know. */
  public record Role(Name role, Name column) {}

  public PlanSection {
    settings = List.copyOf(settings);
  }
}
