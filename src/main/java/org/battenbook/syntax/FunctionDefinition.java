package org.battenbook.syntax;

import java.util.List;
import org.battenbook.source.Span;
import org.jspecify.annotations.Nullable;

/**
 * {@code to find rail(opening, face, lip) = …}: a function of the workbook's own.
 *
 * @param formula absent where it could not be read; that fault is reported, and what calls the
 *     function is of unknown kind, without complaint
 */
public record FunctionDefinition(
    Name name, List<Parameter> parameters, @Nullable Formula formula, String note, Span span) {

  public FunctionDefinition {
    parameters = List.copyOf(parameters);
  }

  public record Parameter(Name name, @Nullable KindExpression kind) {}
}
