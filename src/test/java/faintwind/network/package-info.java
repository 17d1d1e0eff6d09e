/**
 * The proof of the remedies: the assembly as a network of resistors, measured by a meter that is
 * wrong within its class. Only for tests; knows nothing of the remedies.
 */
@NullMarked
package faintwind.network;

import org.jspecify.annotations.NullMarked;
