/** The search among all cases, held against cases that are tried one by one. */
@NullMarked
package org.cotyla.testcases.proof;

import org.jspecify.annotations.NullMarked;
