/**
 * What to do next and whether one may: checklists, steps, bands, clocks, gates, remedies. Pure; no
 * screen opens a gate by itself.
 */
@NullMarked
package faintwind.guide;

import org.jspecify.annotations.NullMarked;
