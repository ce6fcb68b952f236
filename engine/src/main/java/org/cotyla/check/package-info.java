/**
 * What is wrong, missing or idle in a protocol, over all cases: gaps, clashes, rows that never
 * count, safeguards that can be broken. Changes nothing.
 */
@NullMarked
package org.cotyla.check;

import org.jspecify.annotations.NullMarked;
