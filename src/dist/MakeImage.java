import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * Puts a program together that needs no Java on the machine: a runtime of the modules it uses, the
 * program with its libraries, launchers, manual pages, completion and licences.
 *
 * <p>Run by {@code mvn -Pdist package} as {@code java MakeImage.java PROJECT TIMESTAMP}; writes
 * {@code target/dist/faintwind} (the program) and {@code target/dist/share} (what a package puts
 * elsewhere). Two runs give the same bytes, but for the archive of classes: this Java does not
 * write it twice alike, and the package makes it where it is installed.
 */
public final class MakeImage {
  /**
   * What the program and its libraries ask for ({@code jdeps -s}), and the reader of its own jar.
   */
  private static final String MODULES =
      "java.base,java.desktop,java.logging,java.xml,jdk.net,jdk.unsupported,jdk.xml.dom,jdk.zipfs";

  /** Faces that the toolkit of the window never puts on; a class of each package has to stay. */
  private static final String UNUSED_LOOKS =
      "/java.desktop/javax/swing/plaf/nimbus/*Painter*.class,"
          + "/java.desktop/com/sun/java/swing/plaf/gtk/GTK*.class";

  private final Path project;
  private final FileTime time;
  private final Path image;
  private final Path share;

  private MakeImage(Path project, FileTime time) {
    this.project = project;
    this.time = time;
    image = project.resolve("target/dist/faintwind");
    share = project.resolve("target/dist/share");
  }

  public static void main(String[] arguments) throws IOException, InterruptedException {
    new MakeImage(
            Path.of(arguments[0]).toAbsolutePath(), FileTime.from(Instant.parse(arguments[1])))
        .make();
  }

  private void make() throws IOException, InterruptedException {
    empty(project.resolve("target/dist"));
    Files.createDirectories(image);
    runtime();
    copy(project.resolve("target/faintwind.jar"), image.resolve("faintwind.jar"));
    Files.createDirectories(image.resolve("lib"));
    for (Path library : files(project.resolve("target/lib"))) {
      // some jars of the toolkit hold nothing but the name of the one for this system
      if (Files.size(library) > 1000) {
        copy(library, image.resolve("lib").resolve(library.getFileName()));
      }
    }
    for (String launcher : List.of("faintwind", "src/dist/faintwind.cmd")) {
      copy(project.resolve(launcher), image.resolve(Path.of(launcher).getFileName()));
    }
    packed(
        image.resolve("window.classes.gz"),
        Files.readString(project.resolve("src/dist/window.classes")));
    licences();
    stamp(image);
    ran(List.of(java(), "-Xshare:dump", "-Xlog:disable", "-Xlog:all=error"), null);
    manual();
    stamp(project.resolve("target/dist"));
  }

  private void runtime() throws IOException, InterruptedException {
    Path runtime = image.resolve("runtime");
    ran(
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "jlink").toString(),
            "--add-modules",
            MODULES,
            "--strip-debug",
            "--no-header-files",
            "--no-man-pages",
            "--compress=2",
            "--order-resources=**", // else the order is drawn anew in every run
            "--exclude-resources=" + UNUSED_LOOKS,
            "--exclude-files=**/public_suffix_list.dat", // for pages of the web
            "--output",
            runtime.toString()),
        null);
    if (Files.exists(runtime.resolve("lib/server/libjvm.so"))) { // Linux
      try (Stream<Path> all = Files.walk(runtime)) {
        for (Path library : all.filter(file -> file.toString().endsWith(".so")).toList()) {
          ran(List.of("strip", "--strip-unneeded", library.toString()), null);
        }
      }
    }
  }

  /** The licences and notices that the libraries carry in their jars, each text once. */
  private void licences() throws IOException {
    Path licences = image.resolve("licences");
    Files.createDirectories(licences);
    copy(project.resolve("LICENSE"), licences.resolve("faintwind-LICENSE.txt"));
    for (Path list :
        List.of(project.resolve("target/NOTICE.txt"), project.resolve("target/bom.json"))) {
      copy(list, licences.resolve(list.getFileName()));
    }
    Set<String> texts = new HashSet<>();
    for (Path library : files(image.resolve("lib"))) {
      try (ZipFile jar = new ZipFile(library.toFile())) {
        for (ZipEntry entry :
            jar.stream().filter(MakeImage::isLicence).map(ZipEntry.class::cast).toList()) {
          String name = entry.getName().substring(entry.getName().lastIndexOf('/') + 1);
          byte[] text = jar.getInputStream(entry).readAllBytes();
          if (texts.add(new String(text, StandardCharsets.ISO_8859_1).strip())) {
            Files.write(licences.resolve(library.getFileName() + "-" + name), text);
          }
        }
      }
    }
  }

  private static boolean isLicence(ZipEntry entry) {
    String name = entry.getName().toUpperCase(Locale.ROOT);
    return !entry.isDirectory()
        && name.matches("(META-INF/)?(LICEN[CS]E|NOTICE)[-.\\w]*")
        && !name.endsWith(".CLASS");
  }

  /** What the package puts under /usr/share: a page for each command, and the completion. */
  private void manual() throws IOException, InterruptedException {
    Path pages = share.resolve("man/man1");
    Files.createDirectories(pages);
    String completion = said("completion");
    Path completions = share.resolve("bash-completion/completions");
    Files.createDirectories(completions);
    Files.writeString(completions.resolve("faintwind"), completion);
    packed(pages.resolve("faintwind.1.gz"), said("man"));
    for (String command :
        said("--help")
            .lines()
            .filter(l -> l.matches("  [a-z-]+ .*|  [a-z-]+"))
            .map(l -> l.strip().split(" ")[0])
            .toList()) {
      if (!command.equals("help")) {
        packed(pages.resolve("faintwind-" + command + ".1.gz"), said("man", command));
      }
    }
  }

  private static void packed(Path file, String text) throws IOException {
    try (GZIPOutputStream out =
        new GZIPOutputStream(Files.newOutputStream(file)) {
          {
            def.setLevel(Deflater.BEST_COMPRESSION);
          }
        }) {
      out.write(text.getBytes(StandardCharsets.UTF_8));
    }
  }

  private String said(String... words) throws IOException, InterruptedException {
    List<String> command =
        new ArrayList<>(
            List.of(
                java(),
                "-Duser.language=en",
                "-Duser.country=GB",
                "-jar",
                image.resolve("faintwind.jar").toString()));
    command.addAll(List.of(words));
    Path out = Files.createTempFile("faintwind", ".txt");
    try {
      ran(command, out);
      return Files.readString(out);
    } finally {
      Files.delete(out);
    }
  }

  private String java() {
    return image.resolve("runtime/bin/java").toString();
  }

  private static void ran(List<String> command, Path out) throws IOException, InterruptedException {
    ProcessBuilder builder =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT);
    builder.redirectOutput(
        out == null ? ProcessBuilder.Redirect.INHERIT : ProcessBuilder.Redirect.to(out.toFile()));
    int code = builder.start().waitFor();
    if (code != 0) {
      throw new IllegalStateException(command + " ended with " + code);
    }
  }

  private static void copy(Path from, Path to) throws IOException {
    Files.copy(from, to, java.nio.file.StandardCopyOption.COPY_ATTRIBUTES);
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    }
  }

  private void stamp(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      all.forEach(
          file -> {
            try {
              Files.setLastModifiedTime(file, time);
            } catch (IOException broke) {
              throw new UncheckedIOException(broke);
            }
          });
    }
  }

  private static void empty(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
