package org.battenbook.syntax;

import java.util.List;
import org.battenbook.source.Span;
import org.jspecify.annotations.Nullable;

/** {@code to find rail(opening, face, lip) = …}: a function of the workbook's own. */
public record FunctionDefinition(
    Name name, List<Parameter> parameters, Formula formula, String note, Span span) {

  public FunctionDefinition {
    parameters = List.copyOf(parameters);
  }

  public record Parameter(Name name, @Nullable KindExpression kind) {}
}
