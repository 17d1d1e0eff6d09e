package faintwind.job.lesson;

import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.Arrays;
import java.util.Optional;

/** What a class is made of, each by the option that says it on the command line. */
public enum ClassPart {
  NAME("--name"),
  PAIRS("--pairs"),
  NICKNAMES("--nickname"),
  LESSONS("--lesson"),
  ROLES("--role"),
  DESIGN("--design"),
  CODE("--code"),
  FOLDER("FOLDER");

  private final String option;

  ClassPart(String option) {
    this.option = option;
  }

  Where where() {
    return Where.NOWHERE.atColumn(option);
  }

  /** The part that a problem is about; empty where it is about a file of the disk. */
  public static Optional<ClassPart> of(Problem problem) {
    return Arrays.stream(values())
        .filter(part -> problem.where().column().equals(Optional.of(part.option)))
        .findFirst();
  }
}
