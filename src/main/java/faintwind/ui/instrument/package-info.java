/** The instrument that is open and the folder of all instruments, as every room sees them. */
@NullMarked
package faintwind.ui.instrument;

import org.jspecify.annotations.NullMarked;
