/** The air at places: flow through an opening, survey of a list of places, figures of a log. */
@NullMarked
package faintwind.ui.air;

import org.jspecify.annotations.NullMarked;
