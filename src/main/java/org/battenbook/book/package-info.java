/** The model of a job and all files that it follows, with the origin of every formula. */
@NullMarked
package org.battenbook.book;

import org.jspecify.annotations.NullMarked;
