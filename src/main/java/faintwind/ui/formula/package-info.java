/** Formula: fit, verdict, measured against fitted, put in force. */
@NullMarked
package faintwind.ui.formula;

import org.jspecify.annotations.NullMarked;
