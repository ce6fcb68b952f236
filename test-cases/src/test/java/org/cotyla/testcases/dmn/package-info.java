/** Exported models against Drools' DMN engine, and models of others brought in as workbooks. */
package org.cotyla.testcases.dmn;
