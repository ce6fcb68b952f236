/**
 * Why an answer is what it is: the rows and findings under an option, why another does not stand
 * before it and which single finding would change that, what the answer would be if, and what
 * differs between two answers and by which rows. Each question is about one case and its answer.
 */
@NullMarked
package org.cotyla.explain;

import org.jspecify.annotations.NullMarked;
