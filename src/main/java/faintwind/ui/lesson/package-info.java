/** The teacher's window on a class of pairs. */
@NullMarked
package faintwind.ui.lesson;

import org.jspecify.annotations.NullMarked;
