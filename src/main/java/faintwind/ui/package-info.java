/**
 * The window. A screen binds and builds nodes; its model decides and never imports javafx.scene.
 */
@NullMarked
package faintwind.ui;

import org.jspecify.annotations.NullMarked;
