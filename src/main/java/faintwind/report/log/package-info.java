/** The build log. */
@NullMarked
package faintwind.report.log;

import org.jspecify.annotations.NullMarked;
