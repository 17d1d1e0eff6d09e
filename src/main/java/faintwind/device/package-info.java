/**
 * Where samples come from while they are made: serial line, network, typed readings, virtual
 * instrument, and the beat.
 */
@NullMarked
package faintwind.device;

import org.jspecify.annotations.NullMarked;
