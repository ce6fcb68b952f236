package org.cotyla.evaluate;

import java.util.List;

/**
 * What a hit policy makes of the rows that fired.
 *
 * @param firings those that count, in the order of the result, then those set aside
 * @param noneCertain whether it is certain that no row matches
 * @param nonePossible whether it may be that no row matches
 * @param faults contradictions
 */
record Selection(
    List<Firing> firings, boolean noneCertain, boolean nonePossible, List<Fault> faults) {}
