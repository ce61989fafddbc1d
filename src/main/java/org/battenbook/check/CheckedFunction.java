package org.battenbook.check;

import org.battenbook.syntax.FunctionDefinition;

/** A workbook's own function, checked for the kinds of one call's arguments. */
public record CheckedFunction(FunctionDefinition definition, CheckedFormula body) {}
