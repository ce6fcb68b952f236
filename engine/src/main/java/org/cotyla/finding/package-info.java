/** What a case states, and how that is read against a protocol's fields. */
@NullMarked
package org.cotyla.finding;

import org.jspecify.annotations.NullMarked;
