/**
 * The window: its frame and its screens. A screen ({@code XScreen}) binds and builds nodes; its
 * model ({@code XModel}) decides and never imports {@code javafx.scene}, so it is tested without a
 * window. Not here: rules, arithmetic of the instrument, bytes on disk; parts that several screens
 * share are in {@link faintwind.ui.part}.
 */
@NullMarked
package faintwind.ui;

import org.jspecify.annotations.NullMarked;
