/** Edits of a workbook as changes to the texts of its files. Nothing is written to disk here. */
@NullMarked
package org.battenbook.edit;

import org.jspecify.annotations.NullMarked;
