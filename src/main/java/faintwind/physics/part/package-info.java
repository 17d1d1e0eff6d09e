/**
 * What is bought, as data: metals, coats, wires, resistors, batteries, loggers, thermocouple types,
 * and the series they come in.
 */
@NullMarked
package faintwind.physics.part;

import org.jspecify.annotations.NullMarked;
