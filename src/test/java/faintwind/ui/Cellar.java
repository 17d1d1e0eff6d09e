package faintwind.ui;

import faintwind.files.checklist.ChecklistFiles;
import faintwind.files.instrument.InstrumentFolder;
import faintwind.guide.Situation;
import faintwind.guide.Situation.DatedSheet;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Question;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.SampleBuild;
import faintwind.guide.checklist.Step;
import faintwind.job.design.KeptDesigns;
import faintwind.message.Amount;
import faintwind.message.Checked;
import faintwind.message.NumberText;
import faintwind.physics.sheet.DesignSheet;
import faintwind.physics.sheet.Outcome;
import faintwind.record.Event;
import faintwind.record.Event.CautionAcknowledged;
import faintwind.record.Event.ClockStarted;
import faintwind.record.Event.DesignChosen;
import faintwind.record.Event.InstrumentCreated;
import faintwind.record.Event.PhotoAdded;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.StepFinished;
import faintwind.record.Event.StepOpened;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import faintwind.record.ReadingVerdict;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** Made-up instruments of a cheese cellar, built as far as a test wants them. */
public final class Cellar {
  public static final OffsetDateTime NOW = OffsetDateTime.parse("2026-11-21T14:30:00Z");

  private final Checklist checklist;
  private final String design;
  private final DesignSheet sheet;
  private final List<JournalEntry> entries = new ArrayList<>();
  private OffsetDateTime time;

  private Cellar(String name, OffsetDateTime begin) throws IOException {
    Checked<Checklist> read = ChecklistFiles.shipped("standard");
    checklist = ((Checked.Ok<Checklist>) read).value();
    design = resource("/design/half-inch-copper.json");
    sheet = KeptDesigns.withShippedParts().sized(design).orElseThrow().sheet();
    time = begin;
    add(Optional.empty(), new InstrumentCreated(name, true));
  }

  /** An instrument of which nothing is done yet. */
  public static Cellar begin(String name) throws IOException {
    return new Cellar(name, NOW.minusDays(20));
  }

  /** Copies the shipped cellar, with runs, a calibration in force and a field log. */
  public static Path shipped(Path workspace, String folder) throws IOException {
    Path from = Path.of("demo-projects/cellar");
    Path to = workspace.resolve(folder);
    try (Stream<Path> all = Files.walk(from)) {
      for (Path file : all.sorted().toList()) {
        Files.copy(file, to.resolve(from.relativize(file).toString()));
      }
    }
    return to;
  }

  /** Takes the sample design. */
  public Cellar design() {
    add(Optional.empty(), new DesignChosen(design, "first design"));
    return this;
  }

  /** Does every step before one, soundly. */
  public Cellar before(String stepId) {
    for (Step step : checklist.steps()) {
      if (step.id().equals(stepId)) {
        return this;
      }
      doStep(step);
    }
    throw new IllegalArgumentException("step = " + stepId);
  }

  /** Opens a step. */
  public Cellar open(String stepId) {
    add(Optional.of(stepId), new StepOpened());
    return this;
  }

  /** Reads every caution of a step. */
  public Cellar cautions(String stepId) {
    Step step = checklist.step(stepId).orElseThrow();
    step.cautions().forEach(c -> add(Optional.of(stepId), new CautionAcknowledged(c.id())));
    return this;
  }

  /** Types a reading. */
  public Cellar type(String stepId, String reading, String typed) {
    Reading asked = checklist.step(stepId).orElseThrow().reading(reading).orElseThrow();
    Amount amount = SampleBuild.amount(typed, asked.unit());
    add(Optional.of(stepId), new ReadingEntered(reading, typed, amount, Optional.empty()));
    return this;
  }

  /** Starts a clock that has run for some minutes at {@link #NOW}. */
  public Cellar clock(String stepId, double duration_s, long goneMinutes) {
    Step.ClockSpec clock = checklist.step(stepId).orElseThrow().asks().clock().orElseThrow();
    time = NOW.minusMinutes(goneMinutes + 1);
    add(Optional.of(stepId), new ClockStarted(clock.id(), duration_s));
    return this;
  }

  /** Writes the folder. */
  public Path into(Path workspace, String folder) throws IOException {
    Path path = workspace.resolve(folder);
    InstrumentFolder kept = InstrumentFolder.create(path, entries.get(0));
    kept.append(entries.subList(1, entries.size()));
    return path;
  }

  private void add(Optional<String> step, Event event) {
    time = time.plusMinutes(1);
    entries.add(new JournalEntry("e" + entries.size(), time, "Ida", step, event));
  }

  private void doStep(Step step) {
    Optional<String> id = Optional.of(step.id());
    add(id, new StepOpened());
    cautions(step.id());
    for (Question question : step.asks().questions()) {
      Question.Choice choice =
          question.choices().stream().filter(c -> c.stop().isEmpty()).findFirst().orElseThrow();
      add(id, new QuestionAnswered(question.id(), choice.id()));
    }
    for (Reading reading : step.asks().readings()) {
      type(step.id(), reading.id(), good(step, reading));
    }
    step.asks().clock().ifPresent(clock -> add(id, new ClockStarted(clock.id(), 60)));
    step.asks().photo().ifPresent(p -> add(id, new PhotoAdded("photos/x.jpg", "0", p)));
    time = time.plusMinutes(2);
    add(id, new StepFinished());
  }

  /** A text that the reading's bands call good with this design. */
  private String good(Step step, Reading reading) {
    Situation now =
        new Situation(
            InstrumentState.replay(entries),
            List.of(new DatedSheet(NOW.minusYears(1), sheet)),
            NOW);
    Map<String, Double> values = now.values(checklist);
    Stream<String> nominal =
        sheet.quantities().stream().map(Outcome::value).map(v -> String.valueOf(v.nominal()));
    String sample = SampleBuild.readings().getOrDefault(reading.id(), "OL 20M");
    return Stream.concat(Stream.of(sample, "OL 20M", "0"), nominal)
        .filter(typed -> !typed.contains("E") && isGood(reading, typed, values))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(step.id() + ", " + reading.id()));
  }

  private static boolean isGood(Reading reading, String typed, Map<String, Double> values) {
    return NumberText.read(typed, reading.unit())
        .fold(
            (amount, notes) ->
                reading
                    .judge(amount, values)
                    .filter(j -> j.verdict() == ReadingVerdict.GOOD)
                    .isPresent(),
            problems -> false);
  }

  public static String resource(String name) throws IOException {
    try (InputStream in = Objects.requireNonNull(Cellar.class.getResourceAsStream(name), name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
