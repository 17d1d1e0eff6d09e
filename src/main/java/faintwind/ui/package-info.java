/**
 * The window as a whole: the application, the window that wires every room, the keys that work
 * everywhere. What a place shows is in the package of that place; the house around every screen is
 * in {@link faintwind.ui.frame}.
 */
@NullMarked
package faintwind.ui;

import org.jspecify.annotations.NullMarked;
