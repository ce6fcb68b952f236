/**
 * What was done, held against what was advised: counts that can be added up anywhere, and the
 * report of them with its intervals, control charts and survival curves.
 */
@NullMarked
package org.cotyla.audit;

import org.jspecify.annotations.NullMarked;
