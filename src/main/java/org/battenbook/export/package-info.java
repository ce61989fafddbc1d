/** A filled workbook as a spreadsheet file with live formulas. The one package that imports POI. */
@NullMarked
package org.battenbook.export;

import org.jspecify.annotations.NullMarked;
