package faintwind.ui.turntable;

import faintwind.ui.part.Mark;
import java.util.List;
import java.util.OptionalInt;

/**
 * What the live turntable shows in words.
 *
 * @param words what to do, to be read from two metres
 * @param more how much longer; empty where it waits
 * @param sentence why, or how well it goes
 * @param figures the three numbers
 * @param troubles what is wrong, most pressing first
 * @param steps the plan with where it stands
 * @param foot how much is done and how much is to come
 */
record LiveTableView(
    String words,
    String more,
    String sentence,
    List<Figure> figures,
    List<Said> troubles,
    List<StepLine> steps,
    String foot) {

  LiveTableView {
    figures = List.copyOf(figures);
    troubles = List.copyOf(troubles);
    steps = List.copyOf(steps);
  }

  /** A number with its name and what stands behind it in small type. */
  record Figure(String name, String value, String note) {}

  /** What was found and what to do. */
  record Said(String found, String todo) {}

  /**
   * One line of the plan.
   *
   * @param under what came of it; empty before
   * @param spin its place among the spins that were turned, where it is one
   * @param here whether it is open now
   */
  record StepLine(
      Mark mark, String name, String detail, String under, OptionalInt spin, boolean here) {}
}
