package faintwind.command;

import faintwind.calibration.Calibration;
import faintwind.calibration.live.SourceAddress;
import faintwind.calibration.live.SourceText;
import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.job.formula.OpenCalibration;
import faintwind.job.formula.Profiles;
import faintwind.job.live.Listen;
import faintwind.job.live.LiveCount;
import faintwind.job.live.RecordingFiles;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.terminal.ExitCode;
import faintwind.terminal.ListenNews;
import faintwind.terminal.StopOnSignal;
import faintwind.terminal.Terminal;
import faintwind.terminal.TypedDialogue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code faintwind listen SOURCE --out LOG.csv [--calibration CAL.json]}. */
@Command(name = "listen")
public final class ListenCommand implements Callable<Integer> {
  private final Terminal terminal;

  @ArgGroup(multiplicity = "1")
  private Source from = new Source();

  @Mixin private OutOption out = new OutOption();

  @Option(
      names = "--calibration",
      paramLabel = "CAL.json",
      descriptionKey = "faintwind.listen.calibration")
  private @Nullable Path calibration;

  @Option(names = "--profile", paramLabel = "PROFILE", descriptionKey = "profile")
  private @Nullable String profile;

  @Option(names = "--for-s", paramLabel = "SECONDS", descriptionKey = "faintwind.listen.for-s")
  private @Nullable Double for_s;

  @Option(
      names = "--average-s",
      paramLabel = "SECONDS",
      descriptionKey = "faintwind.convert.average-s")
  private @Nullable Double average_s;

  @Option(names = "--decimal-comma", descriptionKey = "faintwind.convert.decimal-comma")
  private boolean decimalComma;

  @Option(names = "--no-raw", descriptionKey = "faintwind.listen.no-raw")
  private boolean withoutRaw;

  @Mixin private AirOptions air = new AirOptions();

  /** A source, or the raw stream of an earlier one. */
  private static final class Source {
    @Parameters(paramLabel = "SOURCE", descriptionKey = "faintwind.listen.source")
    private String source = "";

    @Option(names = "--from", paramLabel = "NAME.raw", descriptionKey = "faintwind.listen.from")
    private @Nullable String raw;

    String text() {
      return raw == null ? source : "raw:" + raw;
    }
  }

  public ListenCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    Checked<SourceAddress> address = SourceText.read(from.text());
    List<Problem> misuse = new ArrayList<>(air.problems());
    misuse.addAll(address.isOk() ? List.of() : address.problems());
    OptionRange.trouble("--average-s", average_s, SpeedSettings.AVERAGE).ifPresent(misuse::add);
    OptionRange.trouble("--for-s", for_s, Listen.LASTING).ifPresent(misuse::add);
    out.trouble(calibration == null ? List.of() : List.of(calibration)).ifPresent(misuse::add);
    boolean again = address.fold((a, notes) -> a instanceof SourceAddress.Raw, p -> false);
    for (Path part : withoutRaw || again ? List.<Path>of() : RecordingFiles.raw(out.path())) {
      out.output(part).occupied(List.of()).ifPresent(misuse::add);
    }
    if (!misuse.isEmpty() || !(address instanceof Checked.Ok<SourceAddress> ok)) {
      terminal.report(misuse);
      return ExitCode.USAGE.number();
    }
    Path folder = out.path().toAbsolutePath().getParent();
    if (folder != null && !Files.isDirectory(folder)) {
      throw new NotDirectoryException(folder.toString());
    }
    Checked<Listen.What> what = what(ok.value());
    if (!(what instanceof Checked.Ok<Listen.What> asked)) {
      return terminal.refuse(what.problems());
    }
    return listen(asked.value());
  }

  private Checked<Listen.What> what(SourceAddress address) throws IOException {
    Checked<Optional<ImportProfile>> meaning =
        profile == null ? Checked.ok(Optional.empty()) : Profiles.find(profile).map(Optional::of);
    Checked<Optional<Listen.BySpeed>> speed =
        calibration == null
            ? Checked.ok(Optional.empty())
            : OpenCalibration.read(calibration).map(this::bySpeed);
    Listen.Raw raw = withoutRaw ? Listen.Raw.NONE : Listen.Raw.KEPT;
    return meaning.then(m -> speed.map(s -> new Listen.What(address, from.text(), m, s, raw)));
  }

  private Optional<Listen.BySpeed> bySpeed(Calibration read) {
    SpeedSettings settings =
        average_s == null
            ? SpeedSettings.usual(read, air.air())
            : new SpeedSettings(average_s, air.air());
    return Optional.of(new Listen.BySpeed(read, settings));
  }

  private int listen(Listen.What what) throws IOException {
    TypedDialogue dialogue = new TypedDialogue(terminal);
    Checked<Listen.Ready> opened;
    try {
      opened = Listen.open(what, out.output(out.path()), dialogue);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return ExitCode.WORLD.number();
    }
    if (!(opened instanceof Checked.Ok<Listen.Ready> ok)) {
      return terminal.refuse(opened.problems());
    }
    Listen.Ready ready = ok.value();
    ListenNews news = new ListenNews(terminal);
    if (what.speed().isPresent()) {
      news.begin(ready.head());
    }
    if (decimalComma) {
      ready.recording().writeCommas();
    }
    ready.recording().listen(news);
    ready.typed().ifPresent(dialogue::begin);
    try (StopOnSignal stop = StopOnSignal.of(ready.recording())) {
      if (for_s != null) {
        ready.recording().listen(stop.after(for_s));
      }
      int code = ended(ready.recording().run());
      stop.endsWith(code);
      return code;
    }
  }

  private int ended(Checked<LiveCount> done) {
    if (!(done instanceof Checked.Ok<LiveCount> ok)) {
      return terminal.refuse(done.problems());
    }
    LiveCount count = ok.value();
    terminal.tell("listen.summary", out.path(), count.rows(), count.gaps(), count.unreadable());
    terminal.report(count.notes(out.path().toString()));
    return ExitCode.DONE.number();
  }
}
