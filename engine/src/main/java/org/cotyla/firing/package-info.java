/**
 * Drools, hidden: tables in, matching rows out. The only package that sees Drools; it decides
 * nothing.
 */
@NullMarked
package org.cotyla.firing;

import org.jspecify.annotations.NullMarked;
