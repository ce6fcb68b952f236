/** Audits of generated ledgers, held against a recount. */
@NullMarked
package org.cotyla.testcases.audit;

import org.jspecify.annotations.NullMarked;
