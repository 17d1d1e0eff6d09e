/** The file of a class. */
@NullMarked
package faintwind.files.lesson;

import org.jspecify.annotations.NullMarked;
