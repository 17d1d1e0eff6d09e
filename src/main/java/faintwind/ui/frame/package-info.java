/**
 * The house around every screen: strip, places, path, sheet, margin, the Next line, focus, look,
 * and what a screen may ask of the window ({@code Desk}). Knows no place.
 */
@NullMarked
package faintwind.ui.frame;

import org.jspecify.annotations.NullMarked;
