/**
 * Gaps and overlaps of decision tables, held against Drools' own analysis of the exported model.
 */
@NullMarked
package org.cotyla.testcases.gaps;

import org.jspecify.annotations.NullMarked;
