package faintwind.job;

import java.nio.file.Files;
import java.nio.file.Path;

/** Names that nothing has yet, so that nothing is overwritten. */
public final class FreeName {
  private FreeName() {}

  /** The name itself where it is free, else with -2, -3 and so on before its ending. */
  public static Path in(Path folder, String name) {
    int dot = name.lastIndexOf('.');
    String stem = dot > 0 ? name.substring(0, dot) : name;
    String ending = dot > 0 ? name.substring(dot) : "";
    Path free = folder.resolve(name);
    for (int i = 2; Files.exists(free); i++) {
      free = folder.resolve(stem + "-" + i + ending);
    }
    return free;
  }

  /** The same beside a file. */
  public static Path beside(Path file, String name) {
    Path folder = file.getParent();
    return in(folder == null ? Path.of("") : folder, name);
  }
}
