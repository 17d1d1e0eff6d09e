/**
 * One use case a class: read, compute, write. The command line, the window, the demo and the tests
 * call the same job.
 */
@NullMarked
package faintwind.job;

import org.jspecify.annotations.NullMarked;
