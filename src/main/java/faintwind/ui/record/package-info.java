/** Record: the ledger of an instrument by date. */
@NullMarked
package faintwind.ui.record;

import org.jspecify.annotations.NullMarked;
