/** The JSON shapes of every answer, shared by the faces; DEVELOPERS.md documents them. */
@NullMarked
package org.battenbook.answer;

import org.jspecify.annotations.NullMarked;
