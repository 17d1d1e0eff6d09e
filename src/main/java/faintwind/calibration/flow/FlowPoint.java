package faintwind.calibration.flow;

/**
 * One place in an opening.
 *
 * @param name unique in its table, such as A1: line and number on it
 * @param line the line it lies on, from 0
 * @param depth_m along its line from the first wall
 * @param up_m from the other wall; of a round opening the same as the depth
 * @param fromWall_m distance of the nearest wall along each of the two, the nearer one
 */
public record FlowPoint(String name, int line, double depth_m, double up_m, double fromWall_m) {}
