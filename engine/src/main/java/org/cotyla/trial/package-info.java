/** Cases with the answers that they should get, run and held against the answers that they get. */
@NullMarked
package org.cotyla.trial;

import org.jspecify.annotations.NullMarked;
