/**
 * The hip geometry that a cell cannot hold: orientations of a cup, the head's way out of it, motion
 * until the neck meets the rim, and areas on the sphere.
 *
 * <p>Angles are in degrees, lengths in millimetres, shares in percent. The frame is that of a right
 * hip in an upright pelvis: x points laterally, y anteriorly and z caudally. A left hip is the
 * mirror image, in which all these numbers are the same.
 */
@NullMarked
package org.cotyla.rules.geometry;

import org.jspecify.annotations.NullMarked;
