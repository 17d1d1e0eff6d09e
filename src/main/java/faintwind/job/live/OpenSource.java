package faintwind.job.live;

import faintwind.calibration.Provenance;
import faintwind.calibration.live.LiveHead;
import faintwind.calibration.live.RecordClock.Arrival;
import faintwind.calibration.live.SourceAddress;
import faintwind.calibration.live.SourceText;
import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.profile.LineForm;
import faintwind.calibration.profile.LineReader;
import faintwind.calibration.run.Possible;
import faintwind.calibration.run.SignalUnit;
import faintwind.device.PeekedSource;
import faintwind.device.RawSource;
import faintwind.device.RawTap;
import faintwind.device.SampleSource;
import faintwind.device.SourceEvent;
import faintwind.device.Sources;
import faintwind.device.Timekeeper;
import faintwind.files.run.LogColumns;
import faintwind.job.JobWatch;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Makes a source of lines ready to be recorded. With a profile nothing is opened yet; without one
 * the lines must be those of a run file, and its header is waited for.
 */
public final class OpenSource {
  private static final int LOOKED_AT_LINES = 50;
  private static final String REHEARSAL = "# rehearsal:";

  private final SourceAddress address;
  private final String text;
  private final SampleSource source;
  private final Optional<RawTap> raw;

  /** How its lines come: for a raw stream as they came the first time. */
  OpenSource(SourceAddress address, String text, SampleSource source, RawTap tap)
      throws IOException {
    boolean again = address instanceof SourceAddress.Raw;
    this.address = again ? origin((SourceAddress.Raw) address) : address;
    this.raw = again ? Optional.empty() : Optional.of(tap);
    this.text = text;
    this.source = source;
  }

  private static SourceAddress origin(SourceAddress.Raw raw) throws IOException {
    String text = RawSource.origin(Path.of(raw.path()));
    return SourceText.read(text).fold((address, notes) -> address, problems -> raw);
  }

  /**
   * A source of lines; typed readings and the virtual instrument are {@link TypedSession} and
   * {@link Rehearsal}.
   *
   * @param address where it is
   * @param text how messages and the file name it
   * @param profile what its lines mean; empty where they are those of a run file
   * @return refused where lines come without a profile and are not those of a run file
   * @throws IOException where the source cannot be had: port missing or busy, nobody listening
   */
  public static Checked<LiveInput> lines(
      SourceAddress address, String text, Optional<ImportProfile> profile)
      throws IOException, InterruptedException {
    return lines(address, text, profile, Timekeeper.system());
  }

  /**
   * The same with an end to the wait for a header.
   *
   * @param patience after which a source without a header is refused
   */
  public static Checked<LiveInput> linesWithin(
      Duration patience, SourceAddress address, String text, Optional<ImportProfile> profile)
      throws IOException, InterruptedException {
    RawTap tap = RawTap.holding();
    SampleSource source = source(address, Timekeeper.system(), tap);
    OpenSource open = new OpenSource(address, text, source, tap);
    if (profile.isPresent()) {
      return Checked.ok(open.byProfile(profile.get()));
    }
    Patience waiting = Patience.with(open.source, patience, JobWatch.NOBODY);
    try {
      return open.byHeader();
    } finally {
      waiting.end();
    }
  }

  static Checked<LiveInput> lines(
      SourceAddress address, String text, Optional<ImportProfile> profile, Timekeeper time)
      throws IOException, InterruptedException {
    RawTap tap = RawTap.holding();
    return new OpenSource(address, text, source(address, time, tap), tap).lines(profile);
  }

  Checked<LiveInput> lines(Optional<ImportProfile> profile)
      throws IOException, InterruptedException {
    return profile.isPresent() ? Checked.ok(byProfile(profile.get())) : byHeader();
  }

  static SampleSource source(SourceAddress address, Timekeeper time, RawTap tap) {
    if (address instanceof SourceAddress.Serial serial) {
      return Sources.serial(serial, time, tap);
    } else if (address instanceof SourceAddress.Tcp tcp) {
      return Sources.tcp(tcp, time, tap);
    } else if (address instanceof SourceAddress.Udp udp) {
      return Sources.udp(udp, time, tap);
    } else if (address instanceof SourceAddress.GrowingFile file) {
      return Sources.file(file, time, tap);
    } else if (address instanceof SourceAddress.Raw again) {
      return Sources.raw(again);
    }
    throw new IllegalArgumentException("address = " + address + ", not one of lines");
  }

  private LiveInput input(
      SampleSource from, ImportProfile profile, Provenance provenance, LineReader.Begin begin) {
    LiveHead head = new LiveHead(profile.unit(), profile.liveColumns(), provenance, text);
    LineReader reader = new LineReader(profile, begin, text);
    Arrival arrival = isStored() ? Arrival.STORED : Arrival.LIVE;
    Possible possible = Possible.of(profile.unit());
    return new LiveInput(from, head, Optional.of(reader), arrival, possible, raw);
  }

  private LiveInput byProfile(ImportProfile profile) {
    LineReader.Begin begin = isStored() ? LineReader.Begin.FILE : LineReader.Begin.STREAM;
    return input(source, profile, Provenance.MEASURED, begin);
  }

  private boolean isStored() {
    return address instanceof SourceAddress.GrowingFile file
        && file.from() == SourceAddress.From.START;
  }

  private Checked<LiveInput> byHeader() throws IOException, InterruptedException {
    List<SourceEvent> first = new ArrayList<>();
    Provenance provenance = Provenance.MEASURED;
    Optional<String> other = Optional.empty();
    int lines = 0;
    while (lines < LOOKED_AT_LINES) {
      SourceEvent event = source.next();
      first.add(event);
      if (event instanceof SourceEvent.Ended) {
        break;
      }
      if (event instanceof SourceEvent.Line line) {
        lines++;
        Optional<ImportProfile> own = runFile(line.text());
        if (own.isPresent()) {
          return Checked.ok(
              // comments may come before the header, so that its number is not known beforehand
              input(new PeekedSource(source, first), own.get(), provenance, LineReader.Begin.STREAM)
                  .passing(others(line.text())));
        }
        provenance = line.text().startsWith(REHEARSAL) ? Provenance.REHEARSAL : provenance;
        boolean comment = line.text().isBlank() || line.text().startsWith("#");
        other = other.or(() -> comment ? Optional.empty() : Optional.of(line.text()));
      }
    }
    source.close();
    return Checked.refused(
        Problem.error("live.no-header", Where.file(text), shown(other.orElse(""))));
  }

  private static Optional<ImportProfile> runFile(String line) {
    List<String> names = names(line);
    List<SignalUnit> units =
        Arrays.stream(SignalUnit.values()).filter(u -> names.contains(u.column())).toList();
    return names.contains("time_s") && units.size() == 1
        ? Optional.of(ImportProfile.runFile(names, units.get(0)))
        : Optional.empty();
  }

  /** Columns of a header that mean nothing here; they pass through. */
  private static List<String> others(String header) {
    return names(header).stream().filter(name -> !LogColumns.isOwn(name)).distinct().toList();
  }

  private static List<String> names(String header) {
    return LineForm.cells(header.startsWith("\ufeff") ? header.substring(1) : header, ',');
  }

  private static String shown(String line) {
    String plain = line.replaceAll("\\p{Cntrl}", " ").strip();
    return plain.length() <= 80 ? plain : plain.substring(0, 80) + "…";
  }
}
