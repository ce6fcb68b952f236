/** That comparing two protocols says what their answers bear out, on random and on real ones. */
package org.cotyla.testcases.comparing;
