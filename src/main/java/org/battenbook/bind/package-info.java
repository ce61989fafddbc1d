/**
 * Name resolution: the meaning of each name in a formula, the rows of each table, and the values
 * that people name on a command line.
 */
@NullMarked
package org.battenbook.bind;

import org.jspecify.annotations.NullMarked;
