/**
 * Design: choices, outcomes with ranges, proposals, comparison, parts. A screen binds; its models
 * decide and never import {@code javafx.scene}.
 */
@NullMarked
package faintwind.ui.design;

import org.jspecify.annotations.NullMarked;
