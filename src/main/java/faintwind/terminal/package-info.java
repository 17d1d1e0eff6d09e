/**
 * The terminal: standard streams, progress, signals, exit codes. The only place that touches the
 * standard streams.
 */
@NullMarked
package faintwind.terminal;

import org.jspecify.annotations.NullMarked;
