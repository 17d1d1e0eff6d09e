package faintwind.guide.lesson;

import faintwind.guide.lesson.SchoolClass.Lesson;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How lessons come again. They keep their weekday and the time of the place, also where the clocks
 * are changed or a year ends between them.
 */
public enum Repeat {
  WEEKLY(1),
  FORTNIGHTLY(2);

  private final int weeks;

  Repeat(int weeks) {
    this.weeks = weeks;
  }

  /** So many lessons from the first one on. */
  public List<Lesson> lessons(Lesson first, int count) {
    return IntStream.range(0, count)
        .mapToObj(i -> new Lesson(first.at().plusWeeks((long) i * weeks), first.minutes()))
        .toList();
  }
}
