package org.battenbook.syntax;

import java.util.List;
import org.battenbook.source.Span;
import org.jspecify.annotations.Nullable;

/**
 * {@code table pieces by title} with its columns and rules; or, without {@code by}, a table that is
 * reopened to take more. {@code table name} may be opened anew in any page of a following workbook.
 *
 * @param key the column whose values name the rows
 * @param openings how rows are opened from other tables'; none where people write them
 * @param given the columns that a person fills in
 * @param workedOut the columns that formulas fill in
 * @param shownFirst the columns a person wants to see first, or empty
 */
public record TableSection(
    Name name,
    @Nullable Name key,
    String note,
    List<Opening> openings,
    List<LineDefinition> given,
    List<LineDefinition> workedOut,
    List<Requirement> requirements,
    List<Caution> cautions,
    List<Name> shownFirst,
    Span span)
    implements PageItem {

  public TableSection {
    openings = List.copyOf(openings);
    given = List.copyOf(given);
    workedOut = List.copyOf(workedOut);
    requirements = List.copyOf(requirements);
    cautions = List.copyOf(cautions);
    shownFirst = List.copyOf(shownFirst);
  }
}
