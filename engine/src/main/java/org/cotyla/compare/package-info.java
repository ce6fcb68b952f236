/**
 * What differs in meaning between two versions of a protocol, proven over every case, and what that
 * changes for past cases.
 */
@NullMarked
package org.cotyla.compare;

import org.jspecify.annotations.NullMarked;
