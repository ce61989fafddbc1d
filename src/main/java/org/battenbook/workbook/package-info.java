/** The library's front door: open a workbook, fill it, ask why, edit it. */
@NullMarked
package org.battenbook.workbook;

import org.jspecify.annotations.NullMarked;
