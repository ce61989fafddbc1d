/** Writes what a job took of the stock, and what it left, into the workbooks that state them. */
@NullMarked
package org.battenbook.keep;

import org.jspecify.annotations.NullMarked;
