package faintwind.demo;

import faintwind.guide.checklist.Caution;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.Step;
import faintwind.guide.checklist.Step.ClockSpec;
import faintwind.job.design.KeptDesigns;
import faintwind.job.design.Sized;
import faintwind.job.record.Enter;
import faintwind.job.record.InstrumentView;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.physics.sheet.DesignSheet;
import faintwind.record.Event;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Walks a made-up builder through the checklist; every entry goes through the same job. */
final class DemoWalk {
  private final Path folder;
  private final KeptDesigns designs;
  private final Enter.Person person;
  private OffsetDateTime now;
  private int ids;

  DemoWalk(Path folder, OffsetDateTime start) throws IOException {
    this.folder = folder;
    this.designs = KeptDesigns.withShippedParts();
    this.now = start;
    this.person =
        new Enter.Person("Made-up builder", () -> String.format(Locale.ROOT, "e%04d", ++ids));
  }

  void begin(String name) throws IOException {
    Enter.begin(folder, new Event.InstrumentCreated(name, true), clock(), person);
  }

  void wait(Duration time) {
    now = now.plus(time);
  }

  OffsetDateTime now() {
    return now;
  }

  Clock clock() {
    return Clock.fixed(now.toInstant(), now.getOffset());
  }

  InstrumentView view() throws IOException {
    return ok(InstrumentView.open(folder, this::sheet));
  }

  /** Two minutes later, an entry. */
  Enter enter() throws IOException {
    wait(Duration.ofMinutes(2));
    return new Enter(view(), clock(), person);
  }

  JournalEntry plain(Event event) throws IOException {
    return ok(enter().plain(Optional.empty(), event));
  }

  void answer(String step, String question, String choice) throws IOException {
    ok(enter().answer(step, question, choice));
  }

  /** Opens a step, reads its cautions one by one, and starts its clock where that comes first. */
  Step begun(String id) throws IOException {
    Step step = view().checklist().step(id).orElseThrow();
    ok(enter().open(id));
    for (Caution caution : step.cautions()) {
      ok(enter().acknowledge(id, caution.id()));
    }
    if (step.asks().clock().filter(clock -> !clock.afterReadings()).isPresent()) {
      ok(enter().startClock(id));
    }
    return step;
  }

  /** The whole step, its readings as typed and its questions as answered. */
  void done(String id, Map<String, String> typed, Map<String, String> answers) throws IOException {
    Step step = begun(id);
    boolean soft = step.asks().clock().filter(ClockSpec::afterReadings).isPresent();
    if (step.asks().clock().isPresent() && !soft) {
      wait(Duration.ofHours(id.equals("warm-up-run") || id.equals("jar-check") ? 1 : 26));
    }
    for (Map.Entry<String, String> answer : answers.entrySet()) {
      answer(id, answer.getKey(), answer.getValue());
    }
    for (Reading reading : step.asks().readings()) {
      ok(enter().reading(id, reading.id(), typed.get(reading.id())));
    }
    if (soft) {
      ok(enter().startClock(id));
      wait(Duration.ofHours(26));
    }
    if (step.asks().photo().isPresent()) {
      ok(enter().photo(id, DemoPicture.of(step.asks().photo().get()), "made up"));
    }
    ok(enter().finish(id));
  }

  <T> T ok(Checked<T> checked) {
    if (checked instanceof Checked.Ok<T> ok) {
      return ok.value();
    }
    Messages words = Messages.of(Locale.ENGLISH);
    List<String> lines = checked.problems().stream().map(words::line).toList();
    throw new IllegalStateException(folder + " at " + now + ": " + lines);
  }

  private Optional<DesignSheet> sheet(String json) {
    try {
      return designs.sized(json).map(Sized::sheet);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
