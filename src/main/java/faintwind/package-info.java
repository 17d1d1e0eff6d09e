/**
 * Launch and command line: words in, job called, exit code out. The only place that touches the
 * standard streams.
 */
@NullMarked
package faintwind;

import org.jspecify.annotations.NullMarked;
