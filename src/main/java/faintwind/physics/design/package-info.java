/**
 * The instrument before it is bought: its parts as data, what they add up to, and whether it can
 * work. {@link faintwind.physics.design.Design} is what a person decided, {@link
 * faintwind.physics.design.DesignSheet} everything that follows from it. How air and heat behave is
 * in {@link faintwind.physics}.
 */
@NullMarked
package faintwind.physics.design;

import org.jspecify.annotations.NullMarked;
