/**
 * What lies around one case: which missing data can change its answer, what would have to be
 * different for another answer, and how close each measured number stands to a line that matters.
 */
@NullMarked
package org.cotyla.explore;

import org.jspecify.annotations.NullMarked;
