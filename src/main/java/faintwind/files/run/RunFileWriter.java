package faintwind.files.run;

import faintwind.calibration.Provenance;
import faintwind.calibration.live.LiveGap;
import faintwind.calibration.live.LiveHead;
import faintwind.calibration.live.LiveRow;
import faintwind.calibration.live.LiveSample;
import faintwind.calibration.speed.SpeedRow;
import faintwind.files.RowText;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Writes a run file row by row while it is recorded; format in docs/formats/run-file.md. Each row
 * is handed to the system at once, so that it outlives this process; {@link #sync} brings it to the
 * disk, so that it outlives the power. A break in the record stands in the column {@code gap} of
 * the row after it. Not safe for two threads.
 */
public final class RunFileWriter {
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
  private final TableForm form;
  private final RunRowText cells;
  private final StringBuilder text = new StringBuilder();

  private RunFileWriter(FileChannel channel, LiveHead head, Columns columns, TableForm form) {
    this.form = form;
    this.columns = columns;
    this.channel = channel;
    this.head = head;
    this.cells = new RunRowText(head.unit(), head.columns());
  }

  /**
   * Starts the file with its comments and its header.
   *
   * @param target empty; closed by its owner
   * @param head what the file holds
   * @param columns what is written beside what arrives
   * @param start when {@code time_s} was 0
   * @param form what stands between its cells, and in its numbers
   */
  public static RunFileWriter begin(
      OwnedFile target, LiveHead head, Columns columns, OffsetDateTime start, TableForm form)
      throws IOException {
    RunFileWriter writer = new RunFileWriter(target.channel(), head, columns, form);
    writer.header(start);
    writer.sync();
    return writer;
  }

  private void header(OffsetDateTime start) throws IOException {
    if (head.provenance() == Provenance.REHEARSAL) {
      text.append(LogHead.REHEARSAL).append(" made up by the virtual instrument\n");
    }
    text.append("# source: ").append(LogHead.excerpt(head.source())).append('\n');
    text.append(LogHead.START).append(' ').append(start).append('\n');
    hand(text.toString());
    text.append(String.join(",", cells.names())).append(',');
    head.others().forEach(name -> text.append(RowText.harmless(name)).append(','));
    text.append(GAP);
    if (columns == Columns.WITH_SPEED) {
      text.append(',').append(String.join(",", SpeedWriter.COLUMNS));
    }
    hand(form.row(text.toString()) + "\n");
  }

  /**
   * Appends one row.
   *
   * @param others its cells of the head's other columns
   * @param speed its air speed; empty cells where there is none
   */
  public void append(LiveRow row, List<String> others, Optional<SpeedRow> speed)
      throws IOException {
    LiveSample sample =
        new LiveSample(
            OptionalDouble.of(row.time_s()),
            row.signal(),
            row.air(),
            row.supply_V(),
            row.terminal_K());
    cells.append(text, sample);
    others.forEach(cell -> text.append(',').append(RowText.harmless(cell)));
    text.append(',').append(row.gap().map(LiveGap::word).orElse(""));
    if (columns == Columns.WITH_SPEED) {
      text.append(',').append(SpeedWriter.cells(speed.orElse(SpeedRow.BAD)));
    }
    hand(form.row(text.toString()) + "\n");
  }

  private void hand(String what) throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap(what.getBytes(StandardCharsets.UTF_8));
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
}
