package faintwind.calibration.plan;

import faintwind.calibration.run.ArmTurning;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What was noted at the bench beside what was planned: two radii written down the other way round,
 * a speed far from the planned one. A person may have had a reason, so these are questions, not
 * refusals.
 */
public final class NotedSpins {
  private NotedSpins() {}

  /**
   * The questions.
   *
   * @param planned in the order planned
   * @param noted in the order noted; nothing is asked where their number is another
   */
  public static List<Problem> questions(List<PlannedSpin> planned, List<ArmTurning> noted) {
    List<Problem> questions = new ArrayList<>();
    if (planned.size() != noted.size()) {
      return questions;
    }
    Set<Integer> exchanged = new HashSet<>();
    for (int i = 0; i < noted.size(); i++) {
      for (int j = i + 1; j < noted.size(); j++) {
        if (exchanged(planned, noted, i, j)) {
          exchanged.add(i);
          exchanged.add(j);
          questions.add(
              Problem.warning(
                  "plan.noted-exchanged",
                  Where.NOWHERE.atLine(i + 1),
                  String.valueOf(i + 1),
                  String.valueOf(j + 1)));
        }
      }
    }
    for (int i = 0; i < noted.size(); i++) {
      double ratio = noted.get(i).speed_m_s() / planned.get(i).speed_m_s();
      if (!exchanged.contains(i) && Math.abs(ratio - 1) > OwnChoices.FAR) {
        questions.add(
            Problem.warning(
                "plan.noted-speed",
                Where.NOWHERE.atLine(i + 1),
                text(noted.get(i).speed_m_s()),
                text(planned.get(i).speed_m_s()),
                String.valueOf(i + 1)));
      }
    }
    return questions;
  }

  private static boolean exchanged(
      List<PlannedSpin> planned, List<ArmTurning> noted, int i, int j) {
    double plannedI = planned.get(i).radius_m().value();
    double plannedJ = planned.get(j).radius_m().value();
    return !same(plannedI, plannedJ)
        && same(noted.get(i).radius_m().value(), plannedJ)
        && same(noted.get(j).radius_m().value(), plannedI);
  }

  private static boolean same(double one, double other) {
    return Math.abs(one / other - 1) < OwnChoices.SAME;
  }

  private static String text(double speed_m_s) {
    return Numerals.places(speed_m_s, 3);
  }
}
