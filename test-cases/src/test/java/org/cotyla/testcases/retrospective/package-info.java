/** Past cases judged by the house protocol: by the command, and inside a distributed engine. */
package org.cotyla.testcases.retrospective;
