package faintwind.job.record;

import faintwind.calibration.plan.PlannedSession;
import faintwind.files.plan.PlanFile;
import faintwind.message.Checked;
import faintwind.message.NumberText;
import faintwind.physics.arm.Turning;
import faintwind.physics.design.Design;
import faintwind.physics.sheet.ArmSheet;
import faintwind.physics.sheet.DesignSheet;
import faintwind.physics.sheet.Outcome;
import faintwind.record.Event;
import faintwind.record.Event.FileAdded;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What the arm is turned at, as far as the journal went: the radii and speeds of the plan kept
 * last, before that the radius as measured, before that as chosen, at the fastest speed of the
 * design.
 */
final class ArmByJournal {

  /** A radius that nobody builds is a slip of the hand. */
  private static final double LEAST_M = 0.1;

  private static final double MOST_M = 5;

  private final Path folder;
  private final List<Standing<ReadingEntered>> radii;
  private final Optional<Standing<FileAdded>> plan;
  private OptionalDouble radius_m = OptionalDouble.empty();
  private List<Turning> planned = List.of();

  ArmByJournal(Path folder, InstrumentState state) {
    this.folder = folder;
    this.radii =
        Stream.of(state.reading("choose-arm", "arm-radius"), state.reading("set-up-arm", "radius"))
            .flatMap(Optional::stream)
            .toList();
    this.plan =
        state.standing(FileAdded.class).stream()
            .filter(line -> line.event().kind() == Event.FileRole.PLAN)
            .reduce((first, second) -> second);
  }

  /**
   * Takes in a line of the journal.
   *
   * @return whether it changes the arm
   * @throws IOException where a plan that is there cannot be read
   */
  boolean changesBy(Standing<? extends Event> line) throws IOException {
    if (plan.filter(last -> last.entry().equals(line.entry())).isPresent()) {
      planned = spins(folder.resolve(plan.get().event().file()));
      return !planned.isEmpty();
    }
    for (Standing<ReadingEntered> radius : radii) {
      if (radius.entry().equals(line.entry())) {
        radius_m = metres(radius.event());
        return radius_m.isPresent() && planned.isEmpty();
      }
    }
    return false;
  }

  /** The sizes of that arm; none where nothing is chosen, measured or planned yet. */
  List<Outcome> sizes(DesignSheet sheet) {
    if (sheet.design().isEmpty()) {
      return List.of();
    }
    Design design = sheet.design().get();
    if (!planned.isEmpty()) {
      return ArmSheet.of(planned, design.air());
    }
    return radius_m.isPresent() && design.use().fastest_m_s() > 0
        ? ArmSheet.of(
            List.of(new Turning(radius_m.getAsDouble(), design.use().fastest_m_s())), design.air())
        : List.of();
  }

  private static OptionalDouble metres(ReadingEntered entered) {
    double value = NumberText.convert(entered.amount().value(), entered.amount().unit(), "m");
    return value >= LEAST_M && value <= MOST_M ? OptionalDouble.of(value) : OptionalDouble.empty();
  }

  /** Every spin of the plan, in both its forms; none where the file cannot be read. */
  private static List<Turning> spins(Path file) throws IOException {
    if (!Files.isRegularFile(file)) {
      return List.of();
    }
    Checked<PlannedSession> read = PlanFile.read(file, file.toString());
    return read.fold(
        (session, notes) ->
            session.choice().plans().stream()
                .flatMap(plan -> plan.spins().stream())
                .map(spin -> new Turning(spin.radius_m().value(), spin.speed_m_s()))
                .toList(),
        problems -> List.of());
  }
}
