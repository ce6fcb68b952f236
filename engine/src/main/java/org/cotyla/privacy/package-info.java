/** What may be kept of a case without naming anybody. */
@NullMarked
package org.cotyla.privacy;

import org.jspecify.annotations.NullMarked;
