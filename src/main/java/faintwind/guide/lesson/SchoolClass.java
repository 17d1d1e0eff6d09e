package faintwind.guide.lesson;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * A class that builds together. Nobody's name is in it.
 *
 * @param name of the class
 * @param purpose what it wants to find out
 * @param lessons in the order of time
 * @param pairs each with an instrument of its own
 * @param roles of a pair's members, such as "builds" and "checks and writes"; they swap each lesson
 * @param design the one design, a file of the class folder; empty where each has its own
 * @param teacher how the teacher signs; empty where no code was chosen
 */
public record SchoolClass(
    String name,
    String purpose,
    List<Lesson> lessons,
    List<Pair> pairs,
    List<String> roles,
    Optional<String> design,
    Optional<Teacher> teacher) {

  public SchoolClass {
    lessons = List.copyOf(lessons);
    pairs = List.copyOf(pairs);
    roles = List.copyOf(roles);
  }

  /** A lesson: when it begins, in the time of the place, and how long it is. */
  public record Lesson(LocalDateTime at, int minutes) {
    public LocalDateTime end() {
      return at.plusMinutes(minutes);
    }
  }

  /**
   * A pair.
   *
   * @param number from 1
   * @param folder of its instrument, within the class folder
   * @param nickname empty where the number is enough
   */
  public record Pair(int number, String folder, String nickname) {}

  /**
   * The teacher.
   *
   * @param name that entries are signed with, such as "Teacher"
   * @param salt of the code's hash, hexadecimal
   * @param rounds of the hash
   * @param hash PBKDF2 with HMAC-SHA-256 (RFC 8018, 5.2) of the code, hexadecimal
   */
  public record Teacher(String name, String salt, int rounds, String hash) {}

  /** The lesson that runs or comes next; empty after the last. */
  public Optional<Lesson> lesson(LocalDateTime now) {
    return lessons.stream().filter(lesson -> lesson.end().isAfter(now)).findFirst();
  }

  /** The first lesson that begins after a time. */
  public Optional<Lesson> lessonAfter(LocalDateTime time) {
    return lessons.stream().filter(lesson -> !lesson.at().isBefore(time)).findFirst();
  }

  /** Number of a lesson, from 1. */
  public int number(Lesson lesson) {
    return lessons.indexOf(lesson) + 1;
  }

  /** The role of a pair's first, second … member in a lesson: they take turns. */
  public List<String> rolesIn(int lessonNumber) {
    List<String> turned = new ArrayList<>(roles);
    Collections.rotate(turned, lessonNumber - 1);
    return turned;
  }
}
