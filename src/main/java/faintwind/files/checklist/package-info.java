/** Checklists and their language overlays. */
@NullMarked
package faintwind.files.checklist;

import org.jspecify.annotations.NullMarked;
