package faintwind.job.record;

import faintwind.files.instrument.InstrumentFolder;
import faintwind.files.instrument.WriterLock;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/** The right of a window to write to the instrument that is open in it. */
public final class HoldInstrument implements Closeable {
  private final WriterLock lock;

  private HoldInstrument(WriterLock lock) {
    this.lock = lock;
  }

  /**
   * Takes the right to write.
   *
   * @param who in whose name, for whoever comes second
   * @return refused where somebody else has it
   * @throws IOException where the folder cannot be written to
   */
  public static Checked<HoldInstrument> take(Path folder, String who) throws IOException {
    Optional<WriterLock> taken = WriterLock.take(folder, AtInstrument.holder(who));
    if (taken.isEmpty()) {
      return Checked.refused(AtInstrument.inUse(folder));
    }
    Optional<Problem> mended = new InstrumentFolder(folder).mendSummary();
    return Checked.ok(new HoldInstrument(taken.get()), mended.stream().toList());
  }

  @Override
  public void close() throws IOException {
    lock.close();
  }
}
