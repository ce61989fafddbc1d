/**
 * Formulas and workbook files as written: sealed records, visitors, and the printer back to text.
 */
@NullMarked
package org.battenbook.syntax;

import org.jspecify.annotations.NullMarked;
