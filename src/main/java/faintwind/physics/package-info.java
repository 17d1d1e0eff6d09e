/**
 * Equations and material data of the instrument, as pure functions of records and SI doubles. An
 * equation belongs here; a number about a run or a fit does not.
 */
@NullMarked
package faintwind.physics;

import org.jspecify.annotations.NullMarked;
