/**
 * Bytes on disk: reading and writing of every format, atomically. Nothing here decides what a
 * number means.
 */
@NullMarked
package faintwind.files;

import org.jspecify.annotations.NullMarked;
