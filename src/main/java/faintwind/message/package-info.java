/**
 * How results and refusals are told: {@link faintwind.message.Checked} values, {@link
 * faintwind.message.Problem}s with a place, and the bundle that words them. Pure; knows nothing of
 * balls or air.
 */
@NullMarked
package faintwind.message;

import org.jspecify.annotations.NullMarked;
