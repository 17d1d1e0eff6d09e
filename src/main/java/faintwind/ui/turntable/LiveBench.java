package faintwind.ui.turntable;

import faintwind.calibration.live.SourceAddress;
import faintwind.calibration.live.SourceText;
import faintwind.calibration.plan.PlannedSession;
import faintwind.calibration.profile.ImportProfile;
import faintwind.job.live.BenchSource;
import faintwind.job.live.LiveInput;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.ui.frame.Desk;
import faintwind.ui.listen.LoggerWays;
import faintwind.ui.listen.SourceChoiceModel;
import faintwind.ui.listen.SourceChoiceModel.Kind;
import faintwind.ui.part.Rows;
import faintwind.ui.part.Words;
import faintwind.ui.work.DiskWords;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.layout.VBox;

/** What is turned at a table of metal, and where its readings come from. */
final class LiveBench extends VBox {
  private static final List<Kind> KINDS =
      List.of(Kind.SERIAL, Kind.TCP, Kind.UDP, Kind.FILE, Kind.TYPED);

  private final Desk desk;
  private final Path instrument;
  private final LiveTables tables;
  private final LiveTables.Answers answers;
  private final PlannedSession planned;
  private final PlanPart part;
  private final SourceChoiceModel source;
  private final VBox problems = new VBox();

  LiveBench(
      Desk desk,
      Path instrument,
      LiveTables tables,
      LiveTables.Answers answers,
      PlannedSession planned) {
    this.desk = desk;
    this.instrument = instrument;
    this.tables = tables;
    this.answers = answers;
    this.planned = planned;
    part = new PlanPart(desk, planned);
    LoggerWays ways = new LoggerWays(desk, instrument, tables.recording(instrument));
    source = ways.source(KINDS);
    getStyleClass().add("data-body");
    getChildren()
        .addAll(
            part,
            ways.shown(source),
            Words.button("live-begin", desk.text("turntable.live.begin"), this::begin),
            problems);
  }

  /** Listens to the source that is said, along the plan. */
  void begin() {
    if (source.kind().get() == Kind.TYPED) {
      SourceText.read(source.text())
          .fold(
              (address, notes) -> {
                beginTyped((SourceAddress.Typed) address);
                return true;
              },
              refused -> {
                say(refused);
                return false;
              });
      return;
    }
    setDisable(true);
    String from = source.text();
    Optional<ImportProfile> lines = source.profile().get();
    desk.background()
        .run(
            watch -> BenchSource.open(from, lines),
            opened -> {
              setDisable(false);
              begin(opened);
            },
            broke -> {
              setDisable(false);
              show(List.of(DiskWords.say(broke, desk.words())));
            });
  }

  private void beginTyped(SourceAddress.Typed address) {
    TypedMeter meter = new TypedMeter(desk.words(), address, source.text());
    record(meter.source().input(), Optional.of(meter));
  }

  private void begin(Checked<LiveInput> opened) {
    if (opened instanceof Checked.Ok<LiveInput> ok) {
      record(ok.value(), Optional.empty());
    } else {
      say(opened.problems());
    }
  }

  private void record(LiveInput input, Optional<TypedMeter> meter) {
    tables.record(
        instrument,
        new LiveTables.Bench(
            input,
            BenchSource.prepare(part.plan(), planned.request().response(), input.head().unit()),
            meter,
            part.lesson()),
        answers);
  }

  private void say(List<Problem> all) {
    show(all.stream().map(desk.words()::line).toList());
  }

  private void show(List<String> lines) {
    problems.getChildren().setAll(Rows.problems(lines, true, desk.words()));
  }
}
