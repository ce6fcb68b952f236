/**
 * What a datum can be: single values, sets of them, and the truth of a test over a set. Knows no
 * tables.
 */
@NullMarked
package org.cotyla.value;

import org.jspecify.annotations.NullMarked;
