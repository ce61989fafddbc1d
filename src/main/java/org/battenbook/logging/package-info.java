/**
 * What the spreadsheet library logs: nothing, unless the program that Battenbook is part of logs.
 */
@NullMarked
package org.battenbook.logging;

import org.jspecify.annotations.NullMarked;
