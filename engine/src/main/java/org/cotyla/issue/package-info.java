/**
 * Faults and remarks with their place, and how they are collected. Knows nothing else of the
 * engine.
 */
@NullMarked
package org.cotyla.issue;

import org.jspecify.annotations.NullMarked;
