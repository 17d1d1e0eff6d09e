package faintwind.job.record;

import faintwind.calibration.bench.JarCheck;
import faintwind.files.calibration.CalibrationFile;
import faintwind.guide.Situation.DatedSheet;
import faintwind.physics.sheet.DesignSheet;
import faintwind.physics.sheet.Outcome;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.Event.DesignChosen;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The sheets of an instrument's designs, and from when a calibration knows more than they do. */
final class CalibratedSheets {
  private CalibratedSheets() {}

  /**
   * One sheet for each design chosen, and one more for the calibration in force.
   *
   * @throws IOException where something that is there cannot be read
   */
  static List<DatedSheet> of(
      Path folder, InstrumentState state, Function<String, Optional<DesignSheet>> sheetOf)
      throws IOException {
    List<DatedSheet> all = new ArrayList<>();
    for (Standing<DesignChosen> line : state.standing(DesignChosen.class)) {
      sheetOf
          .apply(line.event().json())
          .ifPresent(sheet -> all.add(new DatedSheet(line.at(), sheet)));
    }
    Optional<Standing<CalibrationPutInForce>> last = state.last(CalibrationPutInForce.class);
    if (last.isPresent() && !all.isEmpty()) {
      DatedSheet design = all.get(all.size() - 1);
      OffsetDateTime at = last.get().at();
      List<Outcome> better = better(folder.resolve(last.get().event().file()));
      // a design chosen after the calibration is another instrument, which it says nothing of
      if (!better.isEmpty() && !design.since().isAfter(at)) {
        all.add(new DatedSheet(at, design.sheet().with(better)));
      }
    }
    return all;
  }

  private static List<Outcome> better(Path file) throws IOException {
    if (!Files.isRegularFile(file)) {
      return List.of();
    }
    return CalibrationFile.read(file, file.toString())
        .fold((calibration, notes) -> JarCheck.of(calibration), problems -> List.of());
  }
}
