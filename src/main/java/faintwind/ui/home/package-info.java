/** Home: who needs you first. */
@NullMarked
package faintwind.ui.home;

import org.jspecify.annotations.NullMarked;
