/**
 * The arm of the turntable as a piece of mechanics: pull at the tip, flex, tipping, what it takes
 * to drive it. Not here: which speeds are run, and what the moving air does to the balls.
 */
@NullMarked
package faintwind.physics.arm;

import org.jspecify.annotations.NullMarked;
