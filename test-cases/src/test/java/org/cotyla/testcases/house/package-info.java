/** What the checks of the house protocol share: the protocol, an ordinary case, its answer. */
package org.cotyla.testcases.house;
