/** One model, with the provenance of every formula, out of all files that a workbook follows. */
@NullMarked
package org.battenbook.book;

import org.jspecify.annotations.NullMarked;
