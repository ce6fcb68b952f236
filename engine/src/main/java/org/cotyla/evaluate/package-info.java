/**
 * From a case to a recommendation: hit policies, rankings, what is missing and whether it matters.
 */
@NullMarked
package org.cotyla.evaluate;

import org.jspecify.annotations.NullMarked;
