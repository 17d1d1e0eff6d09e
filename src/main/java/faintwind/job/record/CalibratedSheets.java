package faintwind.job.record;

import faintwind.guide.Situation.DatedSheet;
import faintwind.physics.sheet.DesignSheet;
import faintwind.physics.sheet.Outcome;
import faintwind.record.Event;
import faintwind.record.Event.CalibrationMade;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.Event.DesignChosen;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The sheets of an instrument in the order of its journal: of each design, of the arm once it is
 * measured or planned, and of the calibration in force, which knows more than a design does.
 */
final class CalibratedSheets {
  private final Path folder;
  private final InstrumentState state;
  private final KeptGuides guides;
  private final List<DatedSheet> all = new ArrayList<>();
  private final Optional<Standing<CalibrationPutInForce>> inForce;
  private final ArmByJournal arm;

  private CalibratedSheets(Path folder, InstrumentState state, KeptGuides guides) {
    this.folder = folder;
    this.state = state;
    this.guides = guides;
    this.inForce = state.last(CalibrationPutInForce.class);
    this.arm = new ArmByJournal(folder, state);
  }

  /**
   * One sheet for each entry that changed what counts.
   *
   * @throws IOException where something that is there cannot be read
   */
  static List<DatedSheet> of(
      Path folder,
      InstrumentState state,
      Function<String, Optional<DesignSheet>> sheetOf,
      KeptGuides guides)
      throws IOException {
    CalibratedSheets sheets = new CalibratedSheets(folder, state, guides);
    for (Standing<? extends Event> line : state.lines()) {
      if (line.stands()) {
        sheets.follow(line, sheetOf);
      }
    }
    return sheets.all;
  }

  private void follow(
      Standing<? extends Event> line, Function<String, Optional<DesignSheet>> sheetOf)
      throws IOException {
    if (line.event() instanceof DesignChosen chosen) {
      // a calibration made before is one of another instrument, of which it says nothing
      sheetOf
          .apply(chosen.json())
          .ifPresent(sheet -> all.add(dated(line, sheet.with(arm.sizes(sheet)))));
    } else if (!all.isEmpty()) {
      DesignSheet sheet = all.get(all.size() - 1).sheet();
      List<Outcome> better = new ArrayList<>();
      if (inForce.filter(last -> last.entry().equals(line.entry())).isPresent()) {
        String file = inForce.get().event().file();
        better.addAll(guides.jar(folder.resolve(file), entered(file)));
      }
      if (arm.changesBy(line)) {
        better.addAll(arm.sizes(sheet));
      }
      if (!better.isEmpty()) {
        all.add(dated(line, sheet.with(better)));
      }
    }
  }

  private Optional<String> entered(String file) {
    return state
        .last(CalibrationMade.class, line -> line.event().file().equals(file))
        .map(line -> line.event().sha256());
  }

  private static DatedSheet dated(Standing<? extends Event> line, DesignSheet sheet) {
    return new DatedSheet(line.at(), sheet, Optional.of(line.entry()));
  }
}
