/**
 * Lists that other programs keep, .csv and .xlsx, as rows of texts; knows no workbooks. Reads what
 * may come from anyone, so within bounds.
 */
@NullMarked
package org.battenbook.listing;

import org.jspecify.annotations.NullMarked;
