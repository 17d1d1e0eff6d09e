package faintwind.job.lesson;

import faintwind.guide.lesson.SchoolClass;
import faintwind.guide.lesson.SchoolClass.Lesson;
import faintwind.guide.lesson.Spread;
import faintwind.job.bench.BenchRow;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A class as it was found.
 *
 * @param it the class
 * @param pairs in their order, then folders that are none of the class
 * @param now when it was looked at
 * @param trouble why the class folder itself tells nothing now; empty where it does
 */
public record ClassLook(
    SchoolClass it, List<PairLook> pairs, OffsetDateTime now, Optional<String> trouble) {
  private static final int USUAL_min = 45;

  public ClassLook {
    pairs = List.copyOf(pairs);
  }

  /**
   * A pair in the queue of the turntable.
   *
   * @param lesson in which it turns; empty after the last one
   * @param from minutes from the beginning of that lesson; without lessons, from now
   * @param minutes its session takes
   */
  public record Turn(PairLook pair, Optional<Lesson> lesson, double from, double minutes) {
    /** Whether its session is longer than the lesson. */
    public boolean isTooLong() {
      return lesson.filter(l -> from + minutes > l.minutes()).isPresent();
    }
  }

  /**
   * A clock that runs.
   *
   * @param pair whose
   * @param clock which, until when
   * @param before the first lesson that finds it ended; empty after the last
   */
  public record Cure(PairLook pair, BenchRow.Clock clock, Optional<Lesson> before) {}

  /** The same of one pair alone. */
  public ClassLook of(PairLook pair) {
    return new ClassLook(it, List.of(pair), now, trouble);
  }

  /** The lesson that runs or comes next. */
  public Optional<Lesson> lesson() {
    return it.lesson(now.toLocalDateTime());
  }

  /** The time that is left of that lesson, or its length; the usual time where there is none. */
  public int minutes() {
    return lesson().map(lesson -> lesson.minutes() - gone(lesson)).orElse(USUAL_min);
  }

  /** Whole minutes that are gone of a lesson. */
  private int gone(Lesson lesson) {
    long minutes = Duration.between(lesson.at(), now.toLocalDateTime()).toMinutes();
    return (int) Math.max(0, Math.min(minutes, lesson.minutes() - 1));
  }

  /**
   * The queue of the one turntable, in the order of the pairs. A session that does not fit into the
   * rest of a lesson begins the next one.
   */
  public List<Turn> queue() {
    List<Lesson> lessons =
        it.lessons().stream().filter(l -> l.end().isAfter(now.toLocalDateTime())).toList();
    List<Turn> queue = new ArrayList<>();
    int at = 0;
    double from = lessons.isEmpty() ? 0 : gone(lessons.get(0));
    for (PairLook pair : pairs) {
      if (pair.trouble().isEmpty()
          && pair.known().filter(PairLook.Known::waitsForTurntable).isPresent()) {
        double minutes = pair.known().get().turntable_min();
        if (at < lessons.size() && from > 0 && from + minutes > lessons.get(at).minutes()) {
          at++;
          from = 0;
        }
        Optional<Lesson> lesson =
            at < lessons.size() ? Optional.of(lessons.get(at)) : Optional.empty();
        queue.add(new Turn(pair, lesson, from, minutes));
        from += minutes;
      }
    }
    return queue;
  }

  /** Every clock that runs. */
  public List<Cure> cures() {
    List<Cure> cures = new ArrayList<>();
    for (PairLook pair : pairs) {
      pair.known().stream()
          .flatMap(known -> known.looked().row().clocks().stream())
          .forEach(
              clock -> {
                LocalDateTime end =
                    clock.ends().withOffsetSameInstant(now.getOffset()).toLocalDateTime();
                cures.add(new Cure(pair, clock, it.lessonAfter(end)));
              });
    }
    return cures;
  }

  /** How far the instruments lie apart in a quantity; empty where none has it. */
  public Optional<Spread> spread(Quantity quantity) {
    Map<Integer, Double> values = new HashMap<>();
    for (PairLook pair : pairs) {
      pair.known()
          .map(known -> known.numbers().get(quantity))
          .filter(value -> pair.trouble().isEmpty())
          .ifPresent(value -> values.put(pair.pair().number(), value));
    }
    return Spread.of(values);
  }

  /** Which quantities are known of anybody. */
  public List<Quantity> quantities() {
    return List.of(Quantity.values()).stream().filter(q -> spread(q).isPresent()).toList();
  }
}
