package faintwind.job.pool;

import static java.util.Objects.requireNonNull;

import faintwind.calibration.Calibration;
import faintwind.calibration.Cancelled;
import faintwind.calibration.Origin;
import faintwind.calibration.Parameter;
import faintwind.calibration.Pooled;
import faintwind.calibration.fit.pooling.ClassFit;
import faintwind.calibration.fit.pooling.ClassMember;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.pool.Pool;
import faintwind.calibration.pool.SameClass;
import faintwind.calibration.pool.Shared;
import faintwind.calibration.pool.StandsOut;
import faintwind.calibration.response.PhysicsShaped;
import faintwind.calibration.run.ClassKnown;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Uncertain;
import faintwind.files.instrument.InstrumentFolder;
import faintwind.job.JobWatch;
import faintwind.job.formula.Calibrate;
import faintwind.job.formula.Calibrate.Begun;
import faintwind.job.formula.FormulaRuns;
import faintwind.message.Checked;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Fits the instruments of a class together: each alone at first, then each again with what the
 * others say of what all share. An instrument whose runs are refused is named, and the others are
 * pooled without it.
 */
public final class PoolInstruments {
  private final Calibrate calibrate;

  public PoolInstruments(Calibrate calibrate) {
    this.calibrate = calibrate;
  }

  /**
   * What came of a class.
   *
   * @param made the instruments that have a calibration, in the order in which they were named
   * @param leftOut why each of the others has none
   * @param spread what the class shares
   */
  public record Done(List<Made> made, Map<Path, List<Problem>> leftOut, Pool.Spread spread) {}

  /**
   * An instrument's calibration.
   *
   * @param folder of the instrument
   * @param outcome its calibration with what it was drawn from
   * @param standsOut in what it lies off the others, which were then not heard
   */
  public record Made(Path folder, Calibrate.Outcome outcome, Optional<StandsOut> standsOut) {}

  /**
   * Fits them, and writes nothing.
   *
   * @param folders of the instruments
   * @return refused where fewer than three can be fitted, or they do not share arm and design
   * @throws IOException where the disk or a permission fails
   * @throws Cancelled where the watch says so
   */
  public Checked<Done> of(List<Path> folders, JobWatch watch) throws IOException {
    List<Fitted> begun = new ArrayList<>();
    Map<Path, List<Problem>> leftOut = new LinkedHashMap<>();
    for (Path folder : folders) {
      watch.progress("fit", begun.size() + leftOut.size(), folders.size());
      Checked<Fitted> fitted = begin(folder, watch).then(one -> apart(one, begun));
      if (fitted instanceof Checked.Ok<Fitted> ok) {
        begun.add(ok.value());
      } else {
        leftOut.put(folder, fitted.problems());
      }
    }
    rehearsed(begun)
        .forEach(
            one -> {
              begun.remove(one);
              Where where = Where.file(one.folder().toString());
              leftOut.put(one.folder(), List.of(Problem.error("pool.rehearsal", where, "")));
            });
    if (begun.size() < ClassFit.FEWEST) {
      List<Problem> all = new ArrayList<>();
      leftOut.forEach((folder, problems) -> all.addAll(problems));
      String found = String.valueOf(begun.size());
      all.add(Problem.error("pool.too-few", Where.NOWHERE, found, String.valueOf(ClassFit.FEWEST)));
      return Checked.refused(all);
    }
    Map<String, RunSet> sets = new LinkedHashMap<>();
    begun.forEach(each -> sets.put(each.folder().toString(), each.begun().set()));
    List<Problem> unlike = SameClass.trouble(sets);
    return unlike.isEmpty() ? Checked.ok(together(begun, leftOut, watch)) : Checked.refused(unlike);
  }

  /** Those whose recordings come from the virtual instrument, where others are measured. */
  private static List<Fitted> rehearsed(List<Fitted> all) {
    List<Fitted> made =
        all.stream()
            .filter(
                one ->
                    one.begun().notes().stream()
                        .anyMatch(note -> note.id().equals(Calibration.REHEARSAL)))
            .toList();
    return made.size() == all.size() ? List.of() : made;
  }

  /** The same runs in two folders are one session: a folder that was copied. */
  private static Checked<Fitted> apart(Fitted one, List<Fitted> before) {
    String runs = other(one).runsSha256();
    return before.stream()
        .filter(each -> other(each).runsSha256().equals(runs))
        .findFirst()
        .map(
            same ->
                Checked.<Fitted>refused(
                    Problem.error(
                        "pool.same-runs",
                        Where.file(one.folder().toString()),
                        same.folder().toString())))
        .orElseGet(() -> Checked.ok(one));
  }

  /** An instrument fitted alone to a table of its runs. */
  private record Fitted(Path folder, Path table, Begun begun) {}

  /** The fit alone. */
  private Checked<Fitted> begin(Path folder, JobWatch watch) throws IOException {
    Where where = Where.file(folder.toString());
    List<Path> tables = FormulaRuns.tables(new InstrumentFolder(folder).open().state(), folder);
    if (tables.isEmpty()) {
      return Checked.refused(Problem.error("calibrate.no-runs", where, folder.toString()));
    }
    Checked<Begun> begun = calibrate.begin(tables.get(0), watch);
    if (begun instanceof Checked.Ok<Begun> ok
        && !ok.value().choice().fit().model().equals(PhysicsShaped.ID)) {
      String model = ok.value().choice().fit().model();
      return Checked.refused(Problem.error("pool.other-formula", where, model));
    }
    return begun.map(value -> new Fitted(folder, tables.get(0), value));
  }

  private Done together(List<Fitted> alone, Map<Path, List<Problem>> leftOut, JobWatch watch) {
    ClassFit fit =
        ClassFit.of(alone.stream().map(a -> a.begun().choice().fit()).toList(), watch::cancelled);
    List<Integer> sound = new ArrayList<>();
    for (int i = 0; i < alone.size(); i++) {
      if (fit.members().get(i).standsOut().isEmpty()) {
        sound.add(i);
      }
    }
    List<Made> made = new ArrayList<>();
    for (int i = 0; i < alone.size(); i++) {
      watch.progress("judge", i, alone.size());
      int self = i;
      List<Fitted> others = sound.stream().filter(k -> k != self).map(alone::get).toList();
      ClassMember<FitResult> member = fit.members().get(i);
      Begun judged = judged(alone.get(i).begun(), member, others);
      Calibrate.Outcome outcome = calibrate.finish(judged, watch);
      made.add(new Made(alone.get(i).folder(), outcome, member.standsOut()));
    }
    return new Done(List.copyOf(made), leftOut, fit.spread());
  }

  /** The runs with the fit of the class, or with their own where they stand out, and its note. */
  private static Begun judged(Begun alone, ClassMember<FitResult> member, List<Fitted> others) {
    List<Problem> notes = new ArrayList<>(alone.notes());
    Optional<StandsOut> out = member.standsOut();
    if (out.isPresent()) {
      notes.add(standsOut(out.get()));
      return new Begun(alone.choice(), alone.set(), alone.origin(), notes);
    }
    if (others.isEmpty()) {
      notes.add(Problem.warning("pool.nobody", Where.NOWHERE, ""));
      return new Begun(alone.choice(), alone.set(), alone.origin(), notes);
    }
    List<Pooled.Other> with = others.stream().map(PoolInstruments::other).toList();
    String names = with.stream().map(Pooled.Other::instrumentId).collect(Collectors.joining(", "));
    notes.add(Problem.warning("pool.pooled", Where.NOWHERE, names));
    List<Parameter> shared =
        Arrays.stream(Shared.values()).map(each -> expected(each, member.heard())).toList();
    Origin origin = alone.origin().with(new Pooled(with, shared));
    return new Begun(alone.choice().with(member.fit()), alone.set(), origin, notes);
  }

  private static Parameter expected(Shared shared, ClassKnown heard) {
    Uncertain expected = requireNonNull(heard.expected().get(shared.unknown()), shared.unknown());
    return shared.parameter(expected.value(), expected.u().orElseThrow());
  }

  private static Problem standsOut(StandsOut out) {
    String far = Numerals.digits(out.deviations(), 2);
    return Problem.warning("pool.stands-out", Where.NOWHERE, "", out.key(), far);
  }

  private static Pooled.Other other(Fitted one) {
    Origin origin = one.begun().origin();
    String table = String.valueOf(one.table().getFileName());
    return new Pooled.Other(
        origin.instrumentId(), requireNonNull(origin.inputSha256().get(table), table));
  }
}
