/**
 * Image files: how many pixels they have, out of their first bytes. Nothing else in them is read.
 */
@NullMarked
package org.battenbook.picture;

import org.jspecify.annotations.NullMarked;
