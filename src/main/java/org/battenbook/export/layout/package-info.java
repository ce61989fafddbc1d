/**
 * Where each line, table, rule and derivation of a workbook stands in its file. It stands on {@code
 * file}, for addresses; it translates no formulas and writes nothing.
 */
@NullMarked
package org.battenbook.export.layout;

import org.jspecify.annotations.NullMarked;
