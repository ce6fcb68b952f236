/** Digests of protocols and cases over their meaning (RFC 8785). */
@NullMarked
package org.cotyla.identity;

import org.jspecify.annotations.NullMarked;
