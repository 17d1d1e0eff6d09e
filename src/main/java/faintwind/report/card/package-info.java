/**
 * Cards: what a step shows beside its words, worked out from the design in force, as rows, remarks
 * and drawings, for the window and for paper. No layout belongs here.
 */
@NullMarked
package faintwind.report.card;

import org.jspecify.annotations.NullMarked;
