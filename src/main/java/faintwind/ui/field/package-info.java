/** Field: logs as air speed. */
@NullMarked
package faintwind.ui.field;

import org.jspecify.annotations.NullMarked;
