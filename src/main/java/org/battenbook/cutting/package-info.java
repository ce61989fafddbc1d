/**
 * What plans of a workbook state, as jobs for the planners, and what comes of it, as rows of its
 * tables.
 */
@NullMarked
package org.battenbook.cutting;

import org.jspecify.annotations.NullMarked;
