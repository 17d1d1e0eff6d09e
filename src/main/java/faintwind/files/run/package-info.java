/**
 * Run files, field logs, runs tables and the chain file: CSV in, CSV out, foreign rows by an import
 * profile.
 */
@NullMarked
package faintwind.files.run;

import org.jspecify.annotations.NullMarked;
