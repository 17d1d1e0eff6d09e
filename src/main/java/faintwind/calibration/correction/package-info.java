/**
 * What a turntable does to the speed beside radius and count, each with its size and uncertainty:
 * air carried round, draught, the two directions, the state of the air. The fit takes them into
 * account by itself; here they are told apart for a person.
 */
@NullMarked
package faintwind.calibration.correction;

import org.jspecify.annotations.NullMarked;
