package org.cotyla.explore;

import org.cotyla.protocol.Field;
import org.cotyla.value.ValueSet;

/**
 * A datum can change a part of the answer only while another open datum has certain values: for all
 * other values that is proven impossible. Of two data for which this holds both ways neither
 * matters but together with the other.
 *
 * @param facet the part of the answer
 * @param datum the datum that can change it
 * @param other the other datum
 * @param when the values of the other for which it can
 */
public record Condition(Facet facet, Field datum, Field other, ValueSet when) {}
