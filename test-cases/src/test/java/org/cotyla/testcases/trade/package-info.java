/**
 * Rules of thumb of the trade, each a sentence with the check that proves it of the house protocol
 * over invented populations. They are common practice: no publication is named for them.
 */
package org.cotyla.testcases.trade;
