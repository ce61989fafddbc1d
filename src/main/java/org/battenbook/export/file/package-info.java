/**
 * A spreadsheet file: its cells, sheets and number formats, and how they are written. It knows
 * values and units but no workbooks. No other package writes with the spreadsheet library, POI.
 */
@NullMarked
package org.battenbook.export.file;

import org.jspecify.annotations.NullMarked;
