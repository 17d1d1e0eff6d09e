/** The build, step by step: instruction, readings, verdicts, cautions, gates, clocks, plating. */
@NullMarked
package faintwind.ui.make;

import org.jspecify.annotations.NullMarked;
