/**
 * What screens are put together from: marks, number fields, cautions, clocks, notes, plot cards.
 * Nothing here knows an instrument, a step or a file of ours.
 */
@NullMarked
package faintwind.ui.part;

import org.jspecify.annotations.NullMarked;
