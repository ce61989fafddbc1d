/** Random files and edits, guided by the code they reach: none may do worse than be refused. */
@NullMarked
package org.battenbook.fuzz;

import org.jspecify.annotations.NullMarked;
