package faintwind.command;

import faintwind.calibration.plan.PlanWish;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What a session should bring and may cost, as the command line tells it. */
final class PlanWishOptions {
  @Option(names = "--from-m-s", paramLabel = "SPEED", descriptionKey = "faintwind.plan.from-m-s")
  private double from_m_s = 0.1;

  @Option(names = "--to-m-s", paramLabel = "SPEED", descriptionKey = "faintwind.plan.to-m-s")
  private double to_m_s = 2.5;

  @Option(names = "--least-beats", paramLabel = "N", descriptionKey = "faintwind.plan.least-beats")
  private int leastBeats = PlanWish.Beats.usual().least();

  @Option(names = "--most-beats", paramLabel = "N", descriptionKey = "faintwind.plan.most-beats")
  private int mostBeats = PlanWish.Beats.usual().most();

  @Option(
      names = "--beats-a-turn",
      split = ",",
      paramLabel = "N",
      descriptionKey = "faintwind.plan.beats-a-turn")
  private List<Integer> beatsATurn = PlanWish.Beats.usual().aTurn();

  @Option(names = "--one-way", descriptionKey = "faintwind.plan.one-way")
  private boolean oneWay;

  @Option(names = "--time-min", paramLabel = "MINUTES", descriptionKey = "faintwind.plan.time-min")
  private @Nullable Double time_min;

  @Option(names = "--lessons", paramLabel = "N", descriptionKey = "faintwind.plan.lessons")
  private @Nullable Integer lessons;

  @Option(names = "--lesson-min", paramLabel = "MINUTES", descriptionKey = "faintwind.plan.lesson")
  private double lesson_min = PlanWish.Lesson.SCHOOL_S / 60;

  /** Everything that cannot be wished for. */
  List<Problem> problems() {
    List<Problem> problems = new ArrayList<>();
    PlanArmOptions.require("--from-m-s", from_m_s, 0.02, 10, problems);
    PlanArmOptions.require("--to-m-s", to_m_s, 0.02, 10, problems);
    if (!(to_m_s > 1.5 * from_m_s)) {
      problems.add(
          Problem.error(
              "usage.plan-range", Where.NOWHERE, String.valueOf(to_m_s), String.valueOf(from_m_s)));
    }
    PlanArmOptions.require("--least-beats", leastBeats, 1, 1000, problems);
    PlanArmOptions.require("--most-beats", mostBeats, Math.max(1, leastBeats), 1000, problems);
    for (int beats : beatsATurn) {
      PlanArmOptions.require("--beats-a-turn", beats, 1, 1000, problems);
    }
    if (time_min != null) {
      PlanArmOptions.require("--time-min", time_min, 10, 100_000, problems);
    }
    if (lessons != null) {
      PlanArmOptions.require("--lessons", lessons, 1, 100, problems);
    }
    PlanArmOptions.require("--lesson-min", lesson_min, 15, 600, problems);
    return problems;
  }

  /** The wish; ask for problems first. */
  PlanWish wish() {
    return new PlanWish(
        from_m_s,
        to_m_s,
        new PlanWish.Beats(leastBeats, mostBeats, beatsATurn),
        oneWay ? PlanWish.Directions.ONE_WAY : PlanWish.Directions.BOTH_WAYS,
        new PlanWish.Time(
            time_min == null ? OptionalDouble.empty() : OptionalDouble.of(60 * time_min),
            lessons == null
                ? Optional.empty()
                : Optional.of(new PlanWish.Lesson(60 * lesson_min, lessons))));
  }
}
