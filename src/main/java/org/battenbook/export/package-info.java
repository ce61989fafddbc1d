/**
 * A filled workbook as a spreadsheet file with live formulas, and one of its tables as a .csv file.
 *
 * <p>This package is the front. It says what each row of each sheet holds. It stands on {@code
 * formula}, which translates formulas; that stands on {@code layout}, which says where each value
 * stands; that stands on {@code file}, which writes cells. No import goes the other way.
 */
@NullMarked
package org.battenbook.export;

import org.jspecify.annotations.NullMarked;
