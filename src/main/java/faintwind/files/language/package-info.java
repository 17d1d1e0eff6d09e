/**
 * Texts in other languages: where the files lie and how they are read. What a text may be is said
 * in {@code message}; nothing here shows one.
 */
@NullMarked
package faintwind.files.language;

import org.jspecify.annotations.NullMarked;
