/** Speed, measured with JMH; nothing here is a test. */
@NullMarked
package org.cotyla.testcases.benchmarks;

import org.jspecify.annotations.NullMarked;
