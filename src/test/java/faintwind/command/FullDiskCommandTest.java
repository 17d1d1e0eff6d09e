package faintwind.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import faintwind.files.instrument.InstrumentFolder;
import faintwind.files.instrument.Journal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Commands on a disk that is full: exit code 1, nothing half-written, nothing lost. */
class FullDiskCommandTest {
  private static final int KIB = 1024;
  private static final int ONE_PAGE_KIB = 4;

  @TempDir Path temp;
  private Path disk;
  private Path folder;
  private boolean mounted;
  private final Shell shell = new Shell();

  @BeforeEach
  void mount() throws Exception {
    disk = Files.createDirectory(temp.resolve("disk"));
    List<String> mount =
        List.of("mount", "-t", "tmpfs", "-o", "size=256k", "tmpfs", disk.toString());
    mounted = succeeds(mount);
    assumeTrue(mounted, "no small disk can be mounted here: " + mount);
    folder = disk.resolve("rind ü");
    assertThat(shell.run("new", folder)).isZero();
  }

  @AfterEach
  void unmount() throws InterruptedException {
    if (mounted) {
      succeeds(List.of("umount", disk.toString()));
    }
  }

  private static boolean succeeds(List<String> command) throws InterruptedException {
    try {
      return new ProcessBuilder(command).start().waitFor() == 0;
    } catch (IOException e) {
      return false;
    }
  }

  private Path bytes(String name, int kib) throws IOException {
    byte[] bytes = new byte[kib * KIB];
    new Random(kib).nextBytes(bytes);
    return Files.write(temp.resolve(name), bytes);
  }

  @Test
  void aFileThatDoesNotFitIsRefusedAndLeavesNothing() throws IOException {
    Path large = bytes("large.bin", 400);
    assertThat(shell.run("note", folder, "--file", large)).isEqualTo(1);
    assertThat(shell.said()).contains("error").doesNotContain("Exception");
    assertThat(folder.resolve("others/large.bin")).doesNotExist();
    assertThat(new InstrumentFolder(folder).audit().problems()).isEmpty();
    Path runs = Path.of("demo-projects/cellar/runs/first-session/runs.csv");
    assertThat(shell.run("note", folder, "--runs", runs)).isEqualTo(1);
    assertThat(Journal.in(folder).content().entries()).hasSize(1);
    assertThat(new InstrumentFolder(folder).audit().problems()).isEmpty();
    assertThat(folder.resolve("runs/set-1")).doesNotExist();
    assertThat(shell.run("note", folder, "there is room for words")).isZero();
    assertThat(shell.run("check", folder)).isZero();
  }

  @Test
  void withoutRoomForOneMoreLineNothingIsEnteredAndItCanBeHandedOver() throws IOException {
    Path filling = disk.resolve("filling");
    int kib = 256;
    while (kib > 0) {
      try {
        Files.write(filling, new byte[kib * KIB]);
        break;
      } catch (IOException full) {
        kib -= 4;
      }
    }
    int entered = 0;
    int code = 0;
    while (code == 0 && entered < 100) {
      code = shell.run("note", folder, "word ".repeat(200));
      entered += code == 0 ? 1 : 0;
    }
    assertThat(code).isEqualTo(1);
    int kept = Journal.in(folder).content().entries().size();
    assertThat(kept)
        .as("what was refused is not there, what was entered is")
        .isEqualTo(entered + 1);
    assertThat(shell.run("pack", folder, "--out", temp.resolve("saved.zip"))).isZero();
    assertThat(shell.run("unpack", temp.resolve("saved.zip"), temp.resolve("elsewhere"))).isZero();
    Files.delete(filling);
    assertThat(shell.run("note", folder, "goes on")).isZero();
    assertThat(shell.run("check", folder)).isZero();
  }

  @Test
  void whatTheJournalHasIsEnteredOnceThoughItsSummaryDoesNotFit() throws IOException {
    Path filling = disk.resolve("filling");
    int kib = 256;
    while (kib > 0 && Files.notExists(filling)) {
      try {
        Files.write(filling, new byte[kib * KIB]);
      } catch (IOException tooMuch) {
        Files.delete(filling);
        kib--;
      }
    }
    Files.write(filling, new byte[(kib - ONE_PAGE_KIB) * KIB]); // for the lock
    // the last page of the journal has room for a line, a file of its own has none
    int code = shell.run("note", folder, "short");
    assertThat(code).as(shell.said()).isZero();
    assertThat(shell.said())
        .contains("The entry is in the journal", "Do not enter it a second time");
    Files.delete(filling);
    assertThat(shell.run("note", folder, "goes on")).isZero();
    assertThat(shell.said()).contains("by 1 line").doesNotContain("Exception");
    assertThat(Journal.in(folder).content().entries()).hasSize(3);
    assertThat(shell.run("check", folder)).isZero();
  }
}
