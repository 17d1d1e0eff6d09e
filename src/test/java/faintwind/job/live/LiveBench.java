package faintwind.job.live;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.live.SourceAddress;
import faintwind.calibration.live.SourceText;
import faintwind.calibration.profile.ImportProfile;
import faintwind.device.StillTime;
import faintwind.files.asset.ProfileFile;
import faintwind.message.Checked;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** A place to record in, in a time that moves when somebody waits, with somebody who hears it. */
record LiveBench(Path folder, StillTime time, Heard heard) {
  LiveBench(Path folder) {
    this(folder, new StillTime(), new Heard());
  }

  static ImportProfile profile() throws IOException {
    String file = "assets/profiles/seconds-millivolts.json";
    return ProfileFile.read(Path.of(file), file).fold((ok, notes) -> ok, p -> null);
  }

  static SourceAddress address(String text) {
    return SourceText.read(text).fold((ok, notes) -> ok, p -> null);
  }

  LiveRecording recording(String source, Optional<ImportProfile> profile)
      throws IOException, InterruptedException {
    Checked<LiveInput> input = OpenSource.lines(address(source), source, profile, time);
    assertThat(input.problems()).isEmpty();
    LiveInput ready = input.fold((ok, notes) -> ok, p -> null);
    LiveRecording recording =
        new LiveRecording(ready, folder.resolve("out.csv"), Optional.empty(), time);
    recording.listen(heard);
    heard.recording = recording;
    return recording;
  }

  List<String> rows() throws IOException {
    return Files.readAllLines(folder.resolve("out.csv")).stream()
        .filter(line -> !line.startsWith("#"))
        .toList();
  }
}
