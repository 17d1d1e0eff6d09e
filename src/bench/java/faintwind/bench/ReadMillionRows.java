package faintwind.bench;

import faintwind.calibration.run.SignalChain;
import faintwind.files.run.LogReader;
import faintwind.files.run.RunFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Reads a made-up log of 1,000,000 rows, whole and row by row, and prints the seconds of each
 * round. After a build: {@code java -cp 'target/classes:target/lib/*'
 * src/bench/java/faintwind/bench/ReadMillionRows.java}
 */
public final class ReadMillionRows {
  private ReadMillionRows() {}

  /** Three rounds: the first shows the cold start. */
  public static void main(String[] arguments) throws IOException {
    Path log = Files.createTempFile("million", ".csv");
    try {
      Files.writeString(log, rows());
      for (int round = 0; round < 3; round++) {
        long start = System.nanoTime();
        boolean read = RunFile.read(log, "log", SignalChain.Input.VOLTAGE).isOk();
        System.out.printf("whole: %s, %.2f s%n", read, (System.nanoTime() - start) * 1e-9);
        start = System.nanoTime();
        System.out.printf("rows: %d, %.2f s%n", count(log), (System.nanoTime() - start) * 1e-9);
      }
    } finally {
      Files.delete(log);
    }
  }

  private static String rows() {
    StringBuilder text = new StringBuilder("time_s,delta_K,air_C,supply_V\n");
    for (int i = 0; i < 1_000_000; i++) {
      text.append(i).append(".0,").append(20 + i % 997 * 0.001).append(",18.25,4.992\n");
    }
    return text.toString();
  }

  private static int count(Path log) throws IOException {
    int rows = 0;
    try (InputStream in = Files.newInputStream(log);
        LogReader reader =
            LogReader.open(in, "log", SignalChain.Input.VOLTAGE)
                .fold(
                    (opened, notes) -> opened,
                    problems -> {
                      throw new IllegalStateException(problems.toString());
                    })) {
      while (reader.next().isPresent()) {
        rows++;
      }
    }
    return rows;
  }
}
