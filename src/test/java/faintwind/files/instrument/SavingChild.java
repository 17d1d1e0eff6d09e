package faintwind.files.instrument;

import faintwind.record.Event;
import faintwind.record.JournalEntry;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A process of its own that enters notes until it is killed or cannot go on. */
final class SavingChild {
  private static final List<String> NEEDED = List.of("jackson", "json-schema", "jspecify", "slf4j");

  private SavingChild() {}

  /**
   * Enters notes into a folder; says each id on standard output once it is kept, and what stopped
   * it on the last line.
   */
  public static void main(String[] arguments) {
    InstrumentFolder folder = new InstrumentFolder(Path.of(arguments[0]));
    int most = Integer.parseInt(arguments[2]);
    try {
      for (int i = 0; i < most; i++) {
        String id = arguments[1] + "-" + i;
        folder.append(List.of(note(id)));
        System.out.println(id);
        System.out.flush();
      }
    } catch (IOException e) {
      System.out.println("stopped " + e);
    }
  }

  static JournalEntry note(String id) {
    return note(id, "note µ ".repeat(20));
  }

  static JournalEntry note(String id, String text) {
    OffsetDateTime now = OffsetDateTime.parse("2026-03-02T09:00:00+01:00");
    return new JournalEntry(id, now, "Käthe", Optional.empty(), new Event.NoteWritten(text));
  }

  /** The command that runs it, after what is to stand before it. */
  static List<String> command(List<String> before, String path, Object... arguments) {
    List<String> command = new ArrayList<>(before);
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp", path));
    command.add(SavingChild.class.getName());
    for (Object argument : arguments) {
      command.add(argument.toString());
    }
    return command;
  }

  static String classPath() {
    return System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
  }

  /** The class path with what it needs copied to where everybody may read. */
  static String readableClassPath(Path into) throws IOException {
    List<String> path = new ArrayList<>();
    for (String part : classPath().split(File.pathSeparator, -1)) {
      Path file = Path.of(part);
      if (Files.isDirectory(file)) {
        path.add(part);
      } else if (NEEDED.stream().anyMatch(n -> String.valueOf(file.getFileName()).contains(n))) {
        path.add(Files.copy(file, into.resolve(String.valueOf(file.getFileName()))).toString());
      }
    }
    return String.join(File.pathSeparator, path);
  }
}
