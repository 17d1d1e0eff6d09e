/**
 * Tables as people have them, brought to lines of text: encodings and sheets. What the lines mean
 * is not decided here.
 */
@NullMarked
package faintwind.files.table;

import org.jspecify.annotations.NullMarked;
