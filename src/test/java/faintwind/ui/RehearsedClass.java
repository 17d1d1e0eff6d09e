package faintwind.ui;

import faintwind.guide.lesson.SchoolClass.Lesson;
import faintwind.job.lesson.MakeClass;
import faintwind.message.Messages;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** A class of five virtual builds at the time of its first lesson; pairs 3 and 4 are faulty. */
public final class RehearsedClass {
  private RehearsedClass() {}

  public static void into(Path folder, Clock clock) throws IOException {
    List<Lesson> lessons =
        List.of(
            new Lesson(LocalDateTime.parse("2026-11-21T14:20"), 45),
            new Lesson(LocalDateTime.parse("2026-11-23T14:20"), 45),
            new Lesson(LocalDateTime.parse("2026-11-25T14:20"), 45));
    MakeClass.Wish wish =
        new MakeClass.Wish(
            "Year 10",
            "How strong is the draught at our windows?",
            lessons,
            List.of("Otters", "", "", "", ""),
            List.of("builds", "checks and writes"),
            Optional.empty(),
            "4711");
    new MakeClass(clock, Messages.of(Locale.ENGLISH)).make(folder, wish);
    build(folder, 1, "glue-heater").open("glue-heater").into(folder, "pair-01");
    build(folder, 2, "zero-check").into(folder, "pair-02");
    build(folder, 3, "glue-heater")
        .type("heater-alone", "heater-alone", "150")
        .into(folder, "pair-03");
    build(folder, 4, "glue-heater")
        .type("heater-alone", "heater-alone", "104")
        .into(folder, "pair-04");
    build(folder, 5, "coat-parts")
        .cautions("coat-parts")
        .clock("coat-parts", 8 * 3600, 60)
        .into(folder, "pair-05");
  }

  /** A virtual build in the place of the folder that was made. */
  private static Cellar build(Path folder, int number, String before) throws IOException {
    try (Stream<Path> made = Files.walk(folder.resolve("pair-0" + number))) {
      for (Path file : made.sorted((one, other) -> other.compareTo(one)).toList()) {
        Files.delete(file);
      }
    }
    return Cellar.begin("Pair " + number).design().before(before);
  }
}
