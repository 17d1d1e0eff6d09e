/** Files about what the air did: converted logs read back, points of an opening, places. */
@NullMarked
package faintwind.files.air;

import org.jspecify.annotations.NullMarked;
