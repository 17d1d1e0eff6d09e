/** Turntable: plan, runs in, the live table beside the spinning arm, corrections. */
@NullMarked
package faintwind.ui.turntable;

import org.jspecify.annotations.NullMarked;
