package faintwind.physics.design;

/**
 * The predicted delta at a moment of the warm-up from cold, or of the cool-down after it.
 *
 * @param time_s time since the heater was switched, s
 * @param warming_K delta while warming up in still air, K
 * @param cooling_K delta while cooling down in still air, K
 */
public record CoursePoint(double time_s, double warming_K, double cooling_K) {}
