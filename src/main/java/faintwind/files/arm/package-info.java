/** Files about an arm. */
@NullMarked
package faintwind.files.arm;

import org.jspecify.annotations.NullMarked;
