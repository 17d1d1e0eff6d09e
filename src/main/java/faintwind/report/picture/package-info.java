/** A picture of a stated size and style, as an image or as SVG. */
@NullMarked
package faintwind.report.picture;

import org.jspecify.annotations.NullMarked;
