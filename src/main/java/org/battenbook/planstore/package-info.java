/**
 * Plans that are kept from run to run: what is asked of a planner, its plan as bytes, and the check
 * of what was read against the job. Knows no workbooks and no files.
 */
@NullMarked
package org.battenbook.planstore;

import org.jspecify.annotations.NullMarked;
