package faintwind.files.run;

import faintwind.calibration.Provenance;
import faintwind.calibration.live.LiveGap;
import faintwind.calibration.live.LiveHead;
import faintwind.calibration.live.LiveRow;
import faintwind.calibration.live.LiveSample;
import faintwind.calibration.speed.SpeedRow;
import faintwind.files.AtomicFile;
import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Writes a run file row by row while it is recorded; format in docs/formats/run-file.md. Each row
 * is handed to the system at once, so that it outlives this process; {@link #sync} brings it to the
 * disk, so that it outlives the power. A break in the record stands in the column {@code gap} of
 * the row after it. Not safe for two threads.
 */
public final class RunFileWriter implements Closeable {
  /** Name of the column that says why the record has a break before a row. */
  public static final String GAP = "gap";

  /** What is written beside what arrives. */
  public enum Columns {
    RECORDED,
    /** The air speed of each row too, as a conversion writes it. */
    WITH_SPEED
  }

  private final FileChannel channel;
  private final LiveHead head;
  private final Columns columns;
  private final RunRowText cells;
  private final StringBuilder text = new StringBuilder();

  private RunFileWriter(FileChannel channel, LiveHead head, Columns columns) {
    this.columns = columns;
    this.channel = channel;
    this.head = head;
    this.cells = new RunRowText(head.unit(), head.columns());
  }

  /**
   * Starts the file with its comments and its header.
   *
   * @param target replaced where it is there
   * @param head what the file holds
   * @param columns what is written beside what arrives
   * @param start when {@code time_s} was 0
   * @throws IOException where the folder is missing or cannot be written
   */
  public static RunFileWriter begin(
      Path target, LiveHead head, Columns columns, OffsetDateTime start) throws IOException {
    FileChannel channel =
        FileChannel.open(
            target,
            StandardOpenOption.CREATE,
            StandardOpenOption.TRUNCATE_EXISTING,
            StandardOpenOption.WRITE);
    RunFileWriter writer = new RunFileWriter(channel, head, columns);
    writer.header(start);
    writer.sync();
    AtomicFile.syncFolder(AtomicFile.folderOf(target.toAbsolutePath()));
    return writer;
  }

  private void header(OffsetDateTime start) throws IOException {
    if (head.provenance() == Provenance.REHEARSAL) {
      text.append(LogHead.REHEARSAL).append(" made up by the virtual instrument\n");
    }
    text.append("# source: ").append(LogHead.excerpt(head.source())).append('\n');
    text.append(LogHead.START).append(' ').append(start).append('\n');
    text.append(String.join(",", cells.names())).append(',').append(GAP);
    if (columns == Columns.WITH_SPEED) {
      text.append(',').append(String.join(",", SpeedWriter.COLUMNS));
    }
    text.append('\n');
    hand();
  }

  /**
   * Appends one row.
   *
   * @param speed its air speed; empty cells where there is none
   */
  public void append(LiveRow row, Optional<SpeedRow> speed) throws IOException {
    LiveSample sample =
        new LiveSample(
            OptionalDouble.of(row.time_s()),
            row.signal(),
            row.air(),
            row.supply_V(),
            row.terminal_K());
    cells.append(text, sample);
    text.append(',').append(row.gap().map(LiveGap::word).orElse(""));
    if (columns == Columns.WITH_SPEED) {
      text.append(',').append(SpeedWriter.cells(speed.orElse(SpeedRow.BAD)));
    }
    text.append('\n');
    hand();
  }

  private void hand() throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap(text.toString().getBytes(StandardCharsets.UTF_8));
    text.setLength(0);
    long whole = channel.position();
    try {
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
    } catch (IOException e) {
      // the rows before it stay readable
      channel.truncate(whole);
      throw e;
    }
  }

  /** A row's time as it stands in the file. */
  public static String time(LiveRow row) {
    return RunRowText.time(row.time_s());
  }

  /** Brings what was appended to the disk. */
  public void sync() throws IOException {
    channel.force(false);
  }

  @Override
  public void close() throws IOException {
    if (channel.isOpen()) {
      channel.force(true);
      channel.close();
    }
  }
}
