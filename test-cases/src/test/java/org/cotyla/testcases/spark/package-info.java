/**
 * The audit of past cases inside a distributed engine, in its local mode. Compiled and run with the
 * profile {@code spark} only, so that nothing else of the project knows of it.
 */
package org.cotyla.testcases.spark;
