/** What may be kept of a case without naming the patient or anybody else. */
@NullMarked
package org.cotyla.privacy;

import org.jspecify.annotations.NullMarked;
