package faintwind.bench;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import faintwind.calibration.Calibration;
import faintwind.calibration.run.SignalChain;
import faintwind.calibration.speed.LogSample;
import faintwind.calibration.speed.SpeedEstimator;
import faintwind.calibration.speed.SpeedRow;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.files.calibration.CalibrationFile;
import faintwind.files.run.LogColumns;
import faintwind.files.run.LogReader;
import faintwind.files.run.LogRow;
import faintwind.files.run.SpeedWriter;
import faintwind.files.run.TableForm;
import faintwind.message.Checked;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.infra.Blackhole;

/** What one row of a log takes: read, estimated, written; and FastCSV's reading and writing. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class RowKernels {
  private static final int ROWS = 8000;
  private static final Path CELLAR = Path.of("demo-projects/cellar");

  private byte[] log;
  private Calibration calibration;
  private LogColumns columns;
  private final List<LogRow> rows = new ArrayList<>();
  private final List<LogSample> samples = new ArrayList<>();
  private final List<SpeedRow> speeds = new ArrayList<>();
  private final List<CsvRecord> records = new ArrayList<>();

  /** Takes the first rows of the demonstration's day. */
  @Setup
  public void begin() throws IOException {
    List<String> lines = Files.readAllLines(CELLAR.resolve("logs/north-shelf-day.csv"));
    log = String.join("\n", lines.subList(2, ROWS + 3)).getBytes(StandardCharsets.UTF_8);
    calibration =
        ok(CalibrationFile.read(CELLAR.resolve("calibrations/2026-09-13.json"), "calibration"));
    try (LogReader reader = open()) {
      columns = reader.columns();
      for (var next = reader.next(); next.isPresent(); next = reader.next()) {
        rows.add(next.get());
      }
    }
    if (rows.size() != ROWS) {
      throw new IllegalStateException(rows.size() + " rows");
    }
    for (LogRow row : rows) {
      samples.add(row.read());
    }
    estimate(SpeedEstimator.filtering(calibration, SpeedSettings.usual(calibration)), speeds);
    try (CsvReader<CsvRecord> csv = csv()) {
      csv.forEach(records::add);
    }
  }

  @Benchmark
  @OperationsPerInvocation(ROWS)
  public void rowRead(Blackhole hole, Spent spent) throws IOException {
    spent.on(ROWS);
    try (LogReader reader = open()) {
      for (var next = reader.next(); next.isPresent(); next = reader.next()) {
        hole.consume(next.get());
      }
    }
  }

  @Benchmark
  @OperationsPerInvocation(ROWS)
  public void rowReadByFastCsv(Blackhole hole, Spent spent) throws IOException {
    spent.on(ROWS);
    try (CsvReader<CsvRecord> csv = csv()) {
      csv.forEach(hole::consume);
    }
  }

  /** All six filters of a live stream, with averages, uncertainty and flags. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public List<SpeedRow> rowFilteredLive(Spent spent) {
    spent.on(ROWS);
    List<SpeedRow> made = new ArrayList<>(ROWS);
    estimate(SpeedEstimator.filtering(calibration, SpeedSettings.usual(calibration)), made);
    return made;
  }

  /** Filter and smoother of a file, with averages, uncertainty and flags. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public List<SpeedRow> rowSmoothed(Spent spent) {
    spent.on(ROWS);
    List<SpeedRow> made = new ArrayList<>(ROWS);
    estimate(SpeedEstimator.smoothing(calibration, SpeedSettings.usual(calibration)), made);
    return made;
  }

  @Benchmark
  @OperationsPerInvocation(ROWS)
  public void rowWritten(Spent spent) throws IOException {
    spent.on(ROWS);
    SpeedWriter writer =
        SpeedWriter.begin(OutputStream.nullOutputStream(), columns, TableForm.POINTS);
    for (int i = 0; i < ROWS; i++) {
      writer.write(rows.get(i), speeds.get(i));
    }
    writer.flush();
  }

  @Benchmark
  @OperationsPerInvocation(ROWS)
  public void rowWrittenByFastCsv(Spent spent) throws IOException {
    spent.on(ROWS);
    try (CsvWriter csv =
        CsvWriter.builder()
            .build(
                new OutputStreamWriter(OutputStream.nullOutputStream(), StandardCharsets.UTF_8))) {
      for (CsvRecord each : records) {
        csv.writeRecord(each.getFields());
      }
    }
  }

  private void estimate(SpeedEstimator estimator, List<SpeedRow> into) {
    for (LogSample sample : samples) {
      estimator.accept(sample, into::add);
    }
    estimator.finish(into::add);
  }

  private LogReader open() throws IOException {
    return ok(
        LogReader.open(new ByteArrayInputStream(log), "log", SignalChain.Input.VOLTAGE));
  }

  private CsvReader<CsvRecord> csv() {
    return CsvReader.builder().ofCsvRecord(new String(log, StandardCharsets.UTF_8));
  }

  private static <T> T ok(Checked<T> read) {
    return read.fold(
        (value, notes) -> value,
        problems -> {
          throw new IllegalStateException(problems.toString());
        });
  }
}
