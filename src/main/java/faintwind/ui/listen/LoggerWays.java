package faintwind.ui.listen;

import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.profile.LineReader;
import faintwind.job.field.ForeignLog;
import faintwind.job.formula.DraftProfile;
import faintwind.job.formula.Profiles;
import faintwind.job.live.Listen;
import faintwind.message.Checked;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Rows;
import faintwind.ui.work.DiskWords;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** How readings of a logger come to an instrument: listened to, or as a log with a profile. */
public final class LoggerWays {
  private final Desk desk;
  private final Path instrument;
  private final ListenModel recording;

  /**
   * Ways to an instrument.
   *
   * @param instrument its folder
   * @param recording the recording that is made for it, begun or not
   */
  public LoggerWays(Desk desk, Path instrument, ListenModel recording) {
    this.desk = desk;
    this.instrument = instrument;
    this.recording = recording;
  }

  /** Whether it is listened to now. */
  public boolean isListening() {
    return recording.isRecording();
  }

  /** Who hears the air speeds of what is recorded, from now on. */
  public void whenSpeed(ListenModel.Hearer hearer) {
    recording.whenSpeed(hearer);
  }

  /** Listens to the logger; profiles that are put together are kept with the instrument. */
  public ListenPane listening(Supplier<Optional<Listen.BySpeed>> speed) {
    SourceChoiceModel choice = source(List.of(SourceChoiceModel.Kind.values()));
    return new ListenPane(desk, recording, choice, speed, profile -> keep(profile, choice::say));
  }

  /** A choice of a source, with the profiles there are. */
  public SourceChoiceModel source(List<SourceChoiceModel.Kind> kinds) {
    SourceChoiceModel choice =
        new SourceChoiceModel(desk.words(), desk.background(), kinds, List.of());
    desk.background()
        .entry(
            watch -> Profiles.allFor(instrument),
            all -> choice.profiles().setAll(all),
            choice::say);
    return choice;
  }

  /** The choice as it is shown. */
  public SourceChoice shown(SourceChoiceModel choice) {
    return new SourceChoice(desk, choice, profile -> keep(profile, choice::say));
  }

  private void keep(ImportProfile profile, Consumer<IOException> failed) {
    OffsetDateTime now = OffsetDateTime.now(desk.clock());
    desk.background().entry(watch -> Profiles.keep(instrument, profile, now), file -> {}, failed);
  }

  /**
   * Asks what the lines of a log mean.
   *
   * @param into where the question is shown
   * @param log the log
   * @param use takes the profile; it is kept with the instrument too
   */
  public void foreign(VBox into, Path log, Consumer<ImportProfile> use) {
    Consumer<IOException> failed =
        broke ->
            into.getChildren()
                .setAll(
                    Rows.problems(List.of(DiskWords.say(broke, desk.words())), true, desk.words()));
    desk.background()
        .entry(
            watch ->
                new Asked(
                    ForeignLog.firstLines(log),
                    DraftProfile.of(log, desk.clock().getZone()),
                    Profiles.allFor(instrument)),
            asked -> into.getChildren().setAll(answer(log, asked, use, failed)),
            failed);
  }

  private record Asked(
      Checked<List<String>> lines, Checked<DraftProfile> draft, List<ImportProfile> profiles) {}

  private List<Node> answer(
      Path log, Asked asked, Consumer<ImportProfile> use, Consumer<IOException> failed) {
    return asked
        .lines()
        .fold(
            (lines, notes) -> previewed(asked, preview(log, lines, asked, use, failed)),
            problems ->
                Rows.problems(
                    problems.stream().map(desk.words()::line).toList(), true, desk.words()));
  }

  /** Above it what the draft took for granted. */
  private List<Node> previewed(Asked asked, ImportPreview preview) {
    List<String> told =
        asked
            .draft()
            .fold(
                (draft, notes) -> draft.notes().stream().map(desk.words()::line).toList(),
                problems -> List.of());
    List<Node> all = new ArrayList<>(Rows.problems(told, false, desk.words()));
    all.add(preview);
    return all;
  }

  private ImportPreview preview(
      Path log,
      List<String> lines,
      Asked asked,
      Consumer<ImportProfile> use,
      Consumer<IOException> failed) {
    String name = String.valueOf(log.getFileName());
    ImportModel model = new ImportModel(desk.words(), name, lines, LineReader.Begin.FILE);
    if (asked.draft() instanceof Checked.Ok<DraftProfile> ok) {
      model.beginFrom(ok.value().profile());
    }
    return new ImportPreview(
        desk.words(),
        model,
        asked.profiles(),
        profile -> {
          keep(profile, failed);
          use.accept(profile);
        });
  }
}
