/**
 * Questions over every possible case, answered exactly: a protocol is cut into the finitely many
 * classes of cases that it can tell apart, and a solver looks for one of them or proves that there
 * is none.
 */
@NullMarked
package org.cotyla.finite;

import org.jspecify.annotations.NullMarked;
