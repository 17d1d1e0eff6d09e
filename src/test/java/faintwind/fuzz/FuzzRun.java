package faintwind.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.stream.Stream;

/**
 * Gives spoiled files to every reader. A refusal is an answer; an exception that comes through, an
 * input that is taken for a failing disk, and one that takes over five seconds are findings, and
 * the input is kept in a folder.
 *
 * <p>Also a program of its own: {@code FuzzRun COUNT SEED FOLDER}.
 */
public final class FuzzRun {
  private static final long MOST_NS = 5_000_000_000L;

  private final Path work;
  private final Path kept;
  private final Random random;
  private final Map<Reader, byte[]> seeds = new EnumMap<>(Reader.class);
  private final Map<Reader, Path> places = new EnumMap<>(Reader.class);
  private final Map<String, Integer> findings = new ConcurrentSkipListMap<>();
  private final List<Reader> draw = new ArrayList<>();
  private final long[] spent_ns = new long[Reader.values().length];
  private final int[] given = new int[Reader.values().length];

  FuzzRun(Path work, Path kept, long seed) throws IOException {
    this.work = work;
    this.kept = kept;
    random = new Random(seed);
    for (Reader reader : Reader.values()) {
      Path folder = Files.createDirectories(work.resolve(reader.name()));
      byte[] sound = new Seeds(folder).of(reader);
      seeds.put(reader, sound);
      places.put(reader, folder.resolve(reader.file));
      for (int i = 0; i < reader.weight; i++) {
        draw.add(reader);
      }
    }
  }

  /** What was found, by reader and kind, with how often. */
  Map<String, Integer> findings() {
    return findings;
  }

  /** Gives one reader its sound file: it must be taken. */
  Object sound(Reader reader) throws IOException {
    return given(reader, seeds.get(reader));
  }

  void run(int count) throws IOException {
    for (int i = 0; i < count; i++) {
      Reader reader = draw.get(random.nextInt(draw.size()));
      byte[] bytes = new Mutation(random.nextLong()).of(seeds.get(reader));
      finding(reader, bytes);
    }
  }

  /** Gives it; what came through, if anything did. */
  Optional<Throwable> finding(Reader reader, byte[] bytes) throws IOException {
    long begun = System.nanoTime();
    Optional<Throwable> through = Optional.empty();
    try {
      given(reader, bytes);
    } catch (IOException | RuntimeException | Error e) {
      through = Optional.of(e);
    }
    long lasted = System.nanoTime() - begun;
    spent_ns[reader.ordinal()] += lasted;
    given[reader.ordinal()]++;
    if (through.isPresent() || lasted > MOST_NS) {
      keep(reader, bytes, through.map(FuzzRun::kind).orElse("over five seconds"));
    }
    return through;
  }

  private Object given(Reader reader, byte[] bytes) throws IOException {
    Path file = places.get(reader);
    Files.write(file, bytes);
    return reader.read(file);
  }

  private static String kind(Throwable through) {
    String place =
        Arrays.stream(through.getStackTrace())
            .filter(f -> f.getClassName().startsWith("faintwind.files"))
            .findFirst()
            .map(f -> f.getFileName() + ":" + f.getLineNumber())
            .orElse("");
    return through.getClass().getSimpleName() + " " + place;
  }

  private void keep(Reader reader, byte[] bytes, String kind) throws IOException {
    String name = reader + " " + kind;
    int times = findings.merge(name, 1, Integer::sum);
    if (times <= 2) {
      Path folder = Files.createDirectories(kept.resolve(reader.name()));
      Files.write(folder.resolve(kind.replaceAll("[^A-Za-z0-9]+", "-") + "-" + times), bytes);
    }
  }

  /** Clears what archives left, so that the folder stays small. */
  private void clear() throws IOException {
    try (Stream<Path> left = Files.list(work.resolve(Reader.ARCHIVE.name()))) {
      for (Path path : left.filter(Files::isDirectory).toList()) {
        try (Stream<Path> inner = Files.walk(path)) {
          for (Path each : inner.sorted((a, b) -> b.compareTo(a)).toList()) {
            Files.delete(each);
          }
        }
      }
    }
  }

  public static void main(String[] arguments) throws Exception {
    int count = Integer.parseInt(arguments[0]);
    Path kept = Path.of(arguments[2]);
    Path work = Files.createTempDirectory("fuzz");
    FuzzRun run = new FuzzRun(work, kept, Long.parseLong(arguments[1]));
    Thread worker =
        new Thread(
            () -> {
              try {
                for (int done = 0; done < count; done += 1000) {
                  run.run(Math.min(1000, count - done));
                  run.clear();
                }
              } catch (IOException e) {
                throw new AssertionError(e);
              }
            });
    worker.setDaemon(true);
    long begun = System.nanoTime();
    worker.start();
    int before = -1;
    int still = 0;
    while (worker.isAlive()) {
      worker.join(1000);
      int now = Arrays.stream(run.given).sum();
      still = now == before ? still + 1 : 0;
      if (now / 50_000 > before / 50_000) {
        System.out.printf(
            "%d inputs in %.0f s, findings %s%n",
            now, (System.nanoTime() - begun) * 1e-9, run.findings());
      }
      before = now;
      if (still == 20) {
        System.out.println("HANGS: " + Arrays.toString(worker.getStackTrace()));
        break;
      }
    }
    System.out.printf(
        "%d inputs in %.0f s, seed %s, largest memory %d MB%n",
        Arrays.stream(run.given).sum(),
        (System.nanoTime() - begun) * 1e-9,
        arguments[1],
        Runtime.getRuntime().maxMemory() >> 20);
    for (Reader reader : Reader.values()) {
      int given = Math.max(1, run.given[reader.ordinal()]);
      System.out.printf(
          "%-14s %8d  %7.0f us each%n",
          reader, run.given[reader.ordinal()], run.spent_ns[reader.ordinal()] / 1e3 / given);
    }
    System.out.println("findings: " + run.findings());
  }
}
