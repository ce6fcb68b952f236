/**
 * Cases, recommendations, plans that were run again and blank cases as JSON, with a JSON Schema for
 * each of the first three beside the classes. With {@code identity} the only packages that see the
 * JSON library.
 */
@NullMarked
package org.cotyla.json;

import org.jspecify.annotations.NullMarked;
