package faintwind.job.lesson;

import faintwind.guide.lesson.SchoolClass;
import faintwind.guide.lesson.SchoolClass.Lesson;
import faintwind.guide.lesson.SchoolClass.Pair;
import faintwind.message.DateText;
import faintwind.message.Messages;

/** How pairs and lessons are called. */
final class ClassWords {
  private final Messages words;

  ClassWords(Messages words) {
    this.words = words;
  }

  /** Such as "Pair 3" or "Pair 3, Otters". */
  String label(Pair pair) {
    return pair.nickname().isBlank()
        ? words.text("class.pair", pair.number())
        : words.text("class.pair-nickname", pair.number(), pair.nickname());
  }

  /** Such as "Lesson 2, 3 December 2026, 09:50, 45 minutes". */
  String lesson(SchoolClass of, Lesson lesson) {
    return words.text(
        "class.lesson", of.number(lesson), DateText.minute(words, lesson.at()), lesson.minutes());
  }
}
