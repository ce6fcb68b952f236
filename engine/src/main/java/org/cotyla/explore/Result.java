package org.cotyla.explore;

import org.cotyla.finite.Claim;

/**
 * One thing that a part of an answer can come to.
 *
 * @param words what it is, as people read it
 * @param claim true of a case that comes to it
 */
record Result(String words, Claim claim) {}
