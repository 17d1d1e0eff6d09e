/** Drawings and documents: plots, build log, labels, code for use without this program. */
@NullMarked
package faintwind.report;

import org.jspecify.annotations.NullMarked;
