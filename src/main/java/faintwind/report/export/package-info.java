/**
 * The formula of a calibration for use without this program: in C, Python, MicroPython, as a
 * spreadsheet, as a table. The typed formulas of {@code calibration.complete} are turned into each
 * language; what a language needs besides is a template that the caller brings, from {@code
 * assets/export}: the Python that reads a calibration is one of them.
 */
@NullMarked
package faintwind.report.export;

import org.jspecify.annotations.NullMarked;
