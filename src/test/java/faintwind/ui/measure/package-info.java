/** Measures what stands in the window: what is cut, what lies over what. */
@NullMarked
package faintwind.ui.measure;

import org.jspecify.annotations.NullMarked;
