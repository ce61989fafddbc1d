package org.battenbook.check;

import org.battenbook.syntax.FunctionDefinition;

/** A workbook function, checked for the kinds of a call's arguments. */
public record CheckedFunction(FunctionDefinition definition, CheckedFormula body) {}
