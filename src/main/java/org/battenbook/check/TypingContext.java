package org.battenbook.check;

import java.util.List;
import org.battenbook.book.Place;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.Span;
import org.battenbook.syntax.FunctionDefinition;
import org.battenbook.value.Kind;
import org.jspecify.annotations.Nullable;

/**
 * The typing context of a formula: the kinds of what it can read. {@link BookCheck} infers them
 * while it checks a whole book. {@link CheckedKinds} knows them already, for an edit of a checked
 * book.
 */
interface TypingContext {
  /** What names, tables, functions and settings mean, apart from the kinds of formulas. */
  CheckEnvironment environment();

  /**
   * The kind of a place.
   *
   * @return {@link Kind#UNKNOWN} if it has a fault, or is read while it is being checked and its
   *     kind is not known yet
   */
  Kind kind(Place place);

  /**
   * The function checked for the kinds of a call's arguments.
   *
   * @param call where the call is written
   * @param diagnostics receives a fault if the kinds do not fit the function
   * @return null if they do not fit, or the function itself has a fault
   */
  @Nullable CheckedFunction checkCall(
      FunctionDefinition definition, List<Kind> kinds, Span call, Diagnostics diagnostics);
}
