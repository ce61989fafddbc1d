/**
 * Formulas of a workbook as formulas of a spreadsheet that give the same values. {@link
 * org.battenbook.export.formula.FormulaTranslator} is the entry. It stands on {@code layout}, which
 * says which cell each name reads.
 */
@NullMarked
package org.battenbook.export.formula;

import org.jspecify.annotations.NullMarked;
