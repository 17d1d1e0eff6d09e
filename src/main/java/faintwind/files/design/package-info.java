/** The design file, its edits, prices and parts, and the sheet that follows from it. */
@NullMarked
package faintwind.files.design;

import org.jspecify.annotations.NullMarked;
