/**
 * An append-only record of which protocol was in force, what was advised, what was done and what
 * came of it. Every entry carries the digest of the one before it.
 */
@NullMarked
package org.cotyla.ledger;

import org.jspecify.annotations.NullMarked;
