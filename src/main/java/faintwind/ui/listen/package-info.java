/** Listening to a logger: choice of a source, import profiles, a recording as it comes. */
@NullMarked
package faintwind.ui.listen;

import org.jspecify.annotations.NullMarked;
