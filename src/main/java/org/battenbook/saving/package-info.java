/** Writes files: each one whole or not at all, several as one, and one writer at a time. */
@NullMarked
package org.battenbook.saving;

import org.jspecify.annotations.NullMarked;
