/** Sheets to print: steps, runs, parts. */
@NullMarked
package faintwind.report.sheet;

import org.jspecify.annotations.NullMarked;
