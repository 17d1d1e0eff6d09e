/**
 * What anyone may add without code: metals, coats, wires, thermocouples, meters, loggers, import
 * profiles.
 */
@NullMarked
package faintwind.files.asset;

import org.jspecify.annotations.NullMarked;
