package faintwind.job.lesson;

import faintwind.files.asset.Library;
import faintwind.files.design.DesignFile;
import faintwind.files.instrument.InstrumentFolder;
import faintwind.job.record.AtInstrument;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** The one design of a class: that of a file, or that of an instrument by its folder. */
public final class OneDesign {
  private OneDesign() {}

  /**
   * Reads it.
   *
   * @return the text of its file; refused where it is no design, or the instrument has none
   * @throws IOException where it cannot be read
   */
  public static Checked<String> text(Path from) throws IOException {
    if (!AtInstrument.is(from)) {
      Checked<?> read = DesignFile.read(from, Library.shipped());
      return read.isOk() ? Checked.ok(Files.readString(from)) : Checked.refused(read.problems());
    }
    Optional<String> json = new InstrumentFolder(from).open().state().designJson();
    if (json.isEmpty()) {
      return Checked.refused(
          Problem.error("class.no-design", ClassPart.DESIGN.where(), from.toString()));
    }
    return DesignFile.parse(json.get(), Library.shipped()).then(design -> Checked.ok(json.get()));
  }
}
