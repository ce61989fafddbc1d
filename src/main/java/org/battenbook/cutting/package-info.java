/**
 * Turns the plans that a workbook states into jobs for the planners, and the planned cuts into rows
 * of the workbook's tables. A row that cannot be planned is reported in the totals of its material.
 */
@NullMarked
package org.battenbook.cutting;

import org.jspecify.annotations.NullMarked;
