/**
 * Layout by need: words that know how wide they must be to be read, rows and tables that fold where
 * what they hold no longer fits. Knows nothing of screens.
 */
@NullMarked
package faintwind.ui.fold;

import org.jspecify.annotations.NullMarked;
