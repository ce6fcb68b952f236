/** Audits what a ledger holds: each decision held against what was advised before it. */
@NullMarked
package org.cotyla.ledgeraudit;

import org.jspecify.annotations.NullMarked;
