package faintwind.guide.turntable;

import static faintwind.guide.turntable.OwnChoices.CLEAR_OVER_NOISE;
import static faintwind.guide.turntable.OwnChoices.CLEAR_SHARE;
import static faintwind.guide.turntable.OwnChoices.DOUBT;
import static faintwind.guide.turntable.OwnChoices.LONGEST_LOOK_S;
import static faintwind.guide.turntable.OwnChoices.LOOK_S;
import static faintwind.guide.turntable.OwnChoices.SAG;
import static faintwind.guide.turntable.OwnChoices.SAG_S;
import static faintwind.guide.turntable.OwnChoices.SETTLED;
import static faintwind.guide.turntable.OwnChoices.SETTLES_AFTER;
import static faintwind.guide.turntable.OwnChoices.SETTLING_S;

import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * What the course of the signal within one step shows against what it should do. All limits are own
 * choices, tried on virtual recordings.
 */
final class CourseTroubles {
  private final SignalHistory history;
  private final ExpectedCourse course;

  CourseTroubles(SignalHistory history, ExpectedCourse course) {
    this.history = history;
    this.course = course;
  }

  /** The signal goes the wrong way or not at all, where it should have gone clearly by now. */
  Optional<Trouble> reaction(double from_s, double speed_m_s) {
    double now_s = history.last_s();
    double spent_s = now_s - from_s;
    OptionalDouble before = history.mean(from_s - 10, from_s + 1);
    OptionalDouble now = history.mean(now_s - 5, now_s);
    if (spent_s < LOOK_S || spent_s > LONGEST_LOOK_S || before.isEmpty() || now.isEmpty()) {
      return Optional.empty();
    }
    double expected = least(before.getAsDouble(), speed_m_s, spent_s);
    double seen = now.getAsDouble() - before.getAsDouble();
    double clear = Math.max(CLEAR_OVER_NOISE * history.noise(), CLEAR_SHARE * Math.abs(scale()));
    if (Math.abs(expected) < clear) {
      return Optional.empty();
    }
    double share = seen / expected;
    if (share < -0.2) {
      return Optional.of(Trouble.of(Trouble.Kind.WRONG_WAY, seen, expected));
    }
    return share < 0.2
        ? Optional.of(Trouble.of(Trouble.Kind.NO_REACTION, seen, expected))
        : Optional.empty();
  }

  /** The smallest change that any likely course makes; 0 where they do not agree on its sign. */
  private double least(double before, double speed_m_s, double spent_s) {
    double weak = course.forcedBy(1 / DOUBT).after(before, speed_m_s, spent_s) - before;
    double strong = course.forcedBy(DOUBT).after(before, speed_m_s, spent_s) - before;
    if (weak * strong <= 0) {
      return 0;
    }
    return Math.abs(weak) < Math.abs(strong) ? weak : strong;
  }

  /** A warm-up that goes on changing long after it should have settled. */
  Optional<Trouble> neverFlat(double from_s) {
    double now_s = history.last_s();
    double settling_s = SETTLES_AFTER / course.still_1_s();
    if (now_s - from_s < settling_s + SETTLING_S / 2) {
      return Optional.empty();
    }
    SimpleRegression line = history.line(now_s - SETTLING_S, now_s);
    double change = line.getSlope() * SETTLING_S / theta(now_s);
    return Math.abs(change) > SETTLED
        ? Optional.of(Trouble.of(Trouble.Kind.NEVER_FLAT, 100 * change))
        : Optional.empty();
  }

  /** In still air with the heater on the signal rises or stands; a sag is moving air. */
  Optional<Trouble> draught(double from_s) {
    double now_s = history.last_s();
    OptionalDouble now = history.mean(now_s - SAG_S, now_s);
    double highest = 0;
    double start_s = Math.max(from_s + SAG_S, now_s - LONGEST_LOOK_S);
    for (double s = start_s; s + SAG_S < now_s - SAG_S; s += SAG_S / 2) {
      OptionalDouble mean = history.mean(s, s + SAG_S);
      if (mean.isPresent()) {
        highest = Math.max(highest, along(mean.getAsDouble()));
      }
    }
    if (now.isEmpty() || !(highest > 0)) {
      return Optional.empty();
    }
    double sag = highest - along(now.getAsDouble());
    double clear = Math.max(SAG * highest, 3 * history.noise());
    return sag > clear
        ? Optional.of(Trouble.of(Trouble.Kind.DRAUGHT, 100 * sag / highest))
        : Optional.empty();
  }

  /** Difference in the direction that heat gives it. */
  private double along(double signal) {
    return Math.signum(course.heating()) * (signal - course.offset());
  }

  private double theta(double now_s) {
    return history.mean(now_s - SAG_S, now_s).orElse(history.last()) - course.offset();
  }

  private double scale() {
    return course.settled(0) - course.offset();
  }
}
