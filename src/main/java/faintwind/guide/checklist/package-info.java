/**
 * The checklist as data: stages, steps, readings, bands, conditions, cautions, clocks, meters. What
 * has become of it in one build is in {@link faintwind.guide}.
 */
@NullMarked
package faintwind.guide.checklist;

import org.jspecify.annotations.NullMarked;
