package faintwind.job;

import faintwind.files.AtomicFile;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * What went wrong in the program, for whoever mends it: kept beside the instruments, never sent. It
 * names the fault, the program and the machine, and nothing of what was entered.
 */
public final class CrashReport {
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd-HHmmss", Locale.ROOT);

  private CrashReport() {}

  /**
   * Keeps a report.
   *
   * @param folder the folder of instruments
   * @param version the program's
   * @return where it is
   */
  public static Path keep(Path folder, String version, OffsetDateTime now, Throwable fault)
      throws IOException {
    StringWriter text = new StringWriter();
    PrintWriter out = new PrintWriter(text);
    out.println("Faintwind " + version + ", " + now);
    for (String name : new String[] {"java.version", "javafx.version", "os.name", "os.arch"}) {
      out.println(name + " " + System.getProperty(name, "unknown"));
    }
    fault.printStackTrace(out);
    out.flush();
    Files.createDirectories(folder);
    Path file = folder.resolve("crash-" + TIME.format(now) + ".txt");
    AtomicFile.write(file, text.toString().getBytes(StandardCharsets.UTF_8));
    return file;
  }
}
