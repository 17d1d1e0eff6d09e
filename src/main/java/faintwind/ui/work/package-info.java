/**
 * Long work in the window: started, shown, cancelled, and ended on the JavaFX thread once. Not
 * here: what the work does (that is a job).
 */
@NullMarked
package faintwind.ui.work;

import org.jspecify.annotations.NullMarked;
