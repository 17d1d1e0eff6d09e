package faintwind.job.turntable;

import faintwind.calibration.Provenance;
import faintwind.calibration.beat.SpinTurns;
import faintwind.calibration.plan.PlannedSpin;
import faintwind.calibration.plan.PlannedStep;
import faintwind.calibration.run.Direction;
import faintwind.files.AtomicFile;
import faintwind.files.RowText;
import faintwind.guide.turntable.DoneStep;
import faintwind.message.Numerals;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The runs table of a live session: heater off, warm-up, each spin with the rest after it, still
 * air at the end; all windows of one recording.
 */
public final class SessionTable {
  private static final String HEAD =
      "run,file,from_s,to_s,kind,radius_mm,u_radius_mm,turns,turns_time_s,u_turns_time_s,"
          + "first_click_s,spin_start_s,spin_stop_s,direction,note\n";

  private final Source source;
  private final List<SessionNote> notes;
  private final StringBuilder text = new StringBuilder(HEAD);
  private boolean lastRow;

  /**
   * Where the rows come from.
   *
   * @param file the recording's name
   * @param provenance whether it was measured
   */
  public record Source(String file, Provenance provenance) {}

  private SessionTable(Source source, List<SessionNote> notes) {
    this.source = source;
    this.notes = new ArrayList<>(notes);
  }

  /** Writes the table, whole or not at all; an earlier one of this session is replaced. */
  public static void write(
      Path table,
      Source source,
      List<DoneStep> steps,
      List<SpinDone> spins,
      List<SessionNote> notes)
      throws IOException {
    SessionTable made = new SessionTable(source, notes);
    made.rows(steps, spins);
    AtomicFile.write(table, made.text.toString().getBytes(StandardCharsets.UTF_8));
  }

  private void rows(List<DoneStep> steps, List<SpinDone> spins) {
    int still = 0;
    for (int i = 0; i < steps.size(); i++) {
      DoneStep step = steps.get(i);
      lastRow = steps.subList(i + 1, steps.size()).stream().noneMatch(SessionTable::hasRow);
      switch (step.step().kind()) {
        case ZERO -> plain("zero", step);
        case WARM_UP, STILL -> {
          still++;
          plain(still == 1 ? "still" : "still" + still, step);
        }
        case SPIN -> spin(step, restEnd_s(steps, i), spins);
        case REST, MOVE -> {} // belongs to the spin before it
      }
    }
  }

  private static boolean hasRow(DoneStep step) {
    PlannedStep.Kind kind = step.step().kind();
    return kind != PlannedStep.Kind.REST && kind != PlannedStep.Kind.MOVE;
  }

  /** The rest belongs to its spin; hands that move the balls do not. */
  private static double restEnd_s(List<DoneStep> steps, int spin) {
    boolean rested =
        spin + 1 < steps.size() && steps.get(spin + 1).step().kind() == PlannedStep.Kind.REST;
    return steps.get(rested ? spin + 1 : spin).to_s();
  }

  private void plain(String name, DoneStep step) {
    String kind = step.step().kind() == PlannedStep.Kind.ZERO ? "zero" : "still";
    begin(name, step.from_s(), step.to_s(), kind);
    text.append(",,,,,,,,,");
    end("", step.to_s());
  }

  private void spin(DoneStep step, double to_s, List<SpinDone> spins) {
    PlannedSpin planned = step.step().spin().orElseThrow();
    SpinDone done = spins.stream().filter(s -> s.step().equals(step)).findFirst().orElseThrow();
    SpinTurns turns = done.turns();
    begin("spin" + planned.number(), step.from_s(), to_s, "spin");
    add(OptionalDouble.of(planned.radius_m().value() * 1000));
    add(scaled(planned.radius_m().u()));
    add(OptionalDouble.of(turns.turns()));
    add(OptionalDouble.of(turns.time_s().value()));
    add(turns.time_s().u());
    add(turns.first_s());
    add(OptionalDouble.of(step.from_s()));
    add(OptionalDouble.of(step.to_s()));
    text.append(planned.direction() == Direction.CW ? "cw" : "ccw").append(',');
    end(
        turns.how() == SpinTurns.How.BY_BEAT ? "not counted: the beat is taken for the pace" : "",
        to_s);
  }

  private void begin(String name, double from_s, double to_s, String kind) {
    text.append(name).append(',').append(source.file()).append(',');
    add(OptionalDouble.of(from_s));
    add(OptionalDouble.of(to_s));
    text.append(kind).append(',');
  }

  /**
   * With what was noted since the row before; the last row takes what was noted in a run that never
   * ended.
   */
  private void end(String note, double to_s) {
    List<String> said = new ArrayList<>();
    said.add(source.provenance() == Provenance.REHEARSAL ? "rehearsal" : "");
    said.add(note);
    List<SessionNote> own = notes.stream().filter(n -> lastRow || n.time_s() < to_s).toList();
    own.forEach(n -> said.add(Numerals.digits(n.time_s(), 5) + " s: " + n.text()));
    notes.removeAll(own);
    said.removeIf(String::isEmpty);
    String all = String.join("; ", said);
    text.append(RowText.plainOrQuoted(all)).append('\n');
  }

  private static OptionalDouble scaled(OptionalDouble u_m) {
    return u_m.isPresent() ? OptionalDouble.of(u_m.getAsDouble() * 1000) : u_m;
  }

  private void add(OptionalDouble value) {
    value.ifPresent(v -> text.append(Numerals.digits(v, 9)));
    text.append(',');
  }
}
