/** The folder of one instrument: journal, photos, summary. */
@NullMarked
package faintwind.files.instrument;

import org.jspecify.annotations.NullMarked;
