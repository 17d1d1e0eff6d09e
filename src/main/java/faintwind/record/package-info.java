/**
 * What was done, when and by whom: journal entries, the state replayed from them, which calibration
 * was in force. Pure; the bytes on disk are in faintwind.files.
 */
@NullMarked
package faintwind.record;

import org.jspecify.annotations.NullMarked;
