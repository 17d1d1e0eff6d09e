package faintwind.files.instrument;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import faintwind.files.instrument.InstrumentFolder.Access;
import faintwind.files.instrument.InstrumentFolder.Opened;
import faintwind.message.Problem;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the world does to a folder, done to it. */
class FolderFaultsTest {
  /** What a crash may leave and the next entry puts right. */
  private static final Set<String> OF_A_CRASH =
      Set.of("journal.torn", "folder.leftover", "folder.file-unknown", "summary.behind");

  @TempDir Path temp;

  private static List<String> ids(Path folder) throws IOException {
    return Journal.in(folder).content().entries().stream().map(e -> e.id()).toList();
  }

  private static List<String> problems(Path folder) throws IOException {
    return new InstrumentFolder(folder).audit().problems().stream().map(Problem::id).toList();
  }

  private static Process start(List<String> command) throws IOException {
    return new ProcessBuilder(command).redirectErrorStream(true).start();
  }

  private static List<String> lines(Process process) throws IOException {
    try (BufferedReader out =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      return out.lines().toList();
    }
  }

  @Test
  void killedInTheMidstOfSavingNothingThatWasKeptIsLost() throws Exception {
    killed(6, 20261128);
  }

  @Test
  @Tag("slow")
  void killedTwoHundredTimesNothingThatWasKeptIsLost() throws Exception {
    killed(200, 7);
  }

  private void killed(int times, long seed) throws Exception {
    Random random = new Random(seed);
    Path folder = Files.createDirectory(temp.resolve("killed"));
    new InstrumentFolder(folder).append(List.of(SavingChild.note("begun")));
    Set<String> kept = new HashSet<>();
    for (int i = 0; i < times; i++) {
      Process child =
          start(
              SavingChild.command(
                  List.of(), SavingChild.classPath(), folder, "k" + i, Integer.MAX_VALUE));
      BufferedReader out =
          new BufferedReader(new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8));
      kept.add(String.valueOf(out.readLine()));
      long until = System.nanoTime() + random.nextInt(120_000_000);
      while (System.nanoTime() < until) {
        Thread.onSpinWait();
      }
      child.toHandle().destroyForcibly();
      out.lines().filter(line -> line.matches("k\\d+-\\d+")).forEach(kept::add);
      assertThat(child.waitFor(60, TimeUnit.SECONDS)).isTrue();
      assertThat(ids(folder)).as("after kill " + i).containsAll(kept);
      assertThat(problems(folder)).as("after kill " + i).allMatch(OF_A_CRASH::contains);
      new InstrumentFolder(folder).append(List.of(SavingChild.note("after-" + i)));
      kept.add("after-" + i);
    }
    assertThat(ids(folder)).containsAll(kept).hasSizeGreaterThan(2 * times);
    assertThat(problems(folder)).allMatch("folder.leftover"::equals);
  }

  @Test
  void summaryThatIsBehindIsMadeAgainAndToldOf() throws IOException {
    Path path = Files.createDirectory(temp.resolve("behind"));
    InstrumentFolder folder = new InstrumentFolder(path);
    folder.append(List.of(SavingChild.note("a")));
    folder.append(List.of(SavingChild.note("b")));
    assertThat(folder.mendSummary()).isEmpty();
    folder.journal().append(List.of(SavingChild.note("c")));
    assertThat(folder.mendSummary().orElseThrow().id()).isEqualTo("summary.rebuilt");
    assertThat(problems(path)).isEmpty();
    Files.writeString(path.resolve("instrument.json"), "{}");
    assertThat(folder.mendSummary()).isEmpty();
  }

  /** With the summary of before (a crash) and that of after (a copy that was cut short). */
  @Test
  void cutAtEveryByteOfItsLastThreeEntriesTheJournalOpensAndGoesOn() throws IOException {
    Path path = Files.createDirectory(temp.resolve("cut"));
    InstrumentFolder folder = new InstrumentFolder(path);
    for (int i = 0; i < 4; i++) {
      folder.append(List.of(SavingChild.note("e" + i, "µ")));
    }
    byte[] early = Files.readAllBytes(path.resolve("instrument.json"));
    int from = Files.readAllBytes(path.resolve("journal.jsonl")).length;
    for (int i = 4; i < 7; i++) {
      folder.append(List.of(SavingChild.note("e" + i, "µ")));
    }
    byte[] late = Files.readAllBytes(path.resolve("instrument.json"));
    byte[] whole = Files.readAllBytes(path.resolve("journal.jsonl"));
    for (int end = from; end < whole.length; end++) {
      for (byte[] summary : end % 5 == 0 ? List.of(early, late) : List.of(early)) {
        Files.write(path.resolve("journal.jsonl"), Arrays.copyOf(whole, end));
        Files.write(path.resolve("instrument.json"), summary);
        Files.deleteIfExists(path.resolve("journal.torn"));
        cutAndGoesOn(folder, summary == late);
      }
    }
  }

  private static void cutAndGoesOn(InstrumentFolder folder, boolean later) throws IOException {
    Opened opened = folder.audit();
    assertThat(opened.access()).isEqualTo(Access.READ_WRITE);
    List<String> found = opened.problems().stream().map(Problem::id).toList();
    assertThat(found)
        .isSubsetOf("journal.torn", "journal.shorter", "journal.line-end-lost", "summary.behind");
    assertThat(found.contains("journal.shorter") || found.contains("journal.line-end-lost"))
        .as("a cut that was no crash is an error")
        .isEqualTo(later);
    List<String> before = ids(folder.path());
    folder.append(List.of(SavingChild.note("on", "µ")));
    assertThat(ids(folder.path())).containsAll(before).endsWith("on");
    assertThat(problems(folder.path())).isEmpty();
  }

  @Test
  void onAFullDiskWhatWasKeptStaysAndTheRestIsToldOf() throws Exception {
    Path disk = Files.createDirectory(temp.resolve("disk"));
    List<String> mount =
        List.of("mount", "-t", "tmpfs", "-o", "size=96k", "tmpfs", disk.toString());
    assumeTrue(succeeds(mount), "no small disk can be mounted here: " + mount);
    try {
      Path path = Files.createDirectory(disk.resolve("rind"));
      InstrumentFolder folder = new InstrumentFolder(path);
      List<String> kept = new ArrayList<>();
      assertThatThrownBy(
              () -> {
                for (int i = 0; i < 1000; i++) {
                  folder.append(List.of(SavingChild.note("e" + i)));
                  kept.add("e" + i);
                }
              })
          .isInstanceOf(IOException.class)
          .hasMessageContaining("space");
      assertThat(kept).hasSizeGreaterThan(20);
      assertThat(ids(path)).containsAll(kept);
      assertThat(problems(path)).isSubsetOf("summary.behind");
      Path other = Files.createDirectory(temp.resolve("elsewhere"));
      PackFolder.write(path, other.resolve("rind.zip"));
      UnpackFolder.Unpacked saved =
          UnpackFolder.read(other.resolve("rind.zip"), other)
              .fold((value, notes) -> value, p -> null);
      assertThat(ids(saved.folder())).containsAll(kept);
    } finally {
      succeeds(List.of("umount", disk.toString()));
    }
  }

  @Test
  void inAFolderThatIsForReadingOnlyNothingIsWrittenAndItIsTold() throws Exception {
    List<String> nobody = List.of("setpriv", "--reuid=65534", "--regid=65534", "--clear-groups");
    List<String> trial = new ArrayList<>(nobody);
    trial.add("true");
    assumeTrue(succeeds(trial), "nobody can be somebody else here: " + trial);
    Files.setPosixFilePermissions(temp, PosixFilePermissions.fromString("rwxr-xr-x"));
    Path path = Files.createDirectory(temp.resolve("closed"));
    InstrumentFolder folder = new InstrumentFolder(path);
    folder.append(List.of(SavingChild.note("e0")));
    byte[] journal = Files.readAllBytes(path.resolve("journal.jsonl"));
    Path jars = Files.createDirectory(temp.resolve("jars"));
    String classes = SavingChild.readableClassPath(jars);
    Process child = start(SavingChild.command(nobody, classes, path, "n", 1));
    List<String> said = lines(child);
    assertThat(child.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assumeTrue(said.stream().noneMatch(s -> s.contains("find or load main")), said.toString());
    assertThat(said).last().asString().startsWith("stopped").contains("AccessDenied");
    assertThat(path.resolve("journal.jsonl")).hasBinaryContent(journal);
    assertThat(problems(path)).isEmpty();
    assertThat(path.resolve("writer.lock")).doesNotExist();
  }

  @Test
  void aFolderThatIsGoneIsToldOfAndNotMadeAnew() throws IOException {
    Path path = Files.createDirectory(temp.resolve("stick"));
    InstrumentFolder folder = new InstrumentFolder(path);
    folder.append(List.of(SavingChild.note("e0")));
    Files.move(path, temp.resolve("pulled-out"));
    assertThatThrownBy(() -> folder.append(List.of(SavingChild.note("e1"))))
        .isInstanceOf(IOException.class);
    assertThat(path).doesNotExist();
    assertThatThrownBy(() -> WriterLock.take(path, "Käthe")).isInstanceOf(IOException.class);
    Files.move(temp.resolve("pulled-out"), path);
    folder.append(List.of(SavingChild.note("e1")));
    assertThat(ids(path)).containsExactly("e0", "e1");
  }

  @Test
  void twoProcessesThatEnterAtOnceKeepOneChain() throws Exception {
    Path path = Files.createDirectory(temp.resolve("two"));
    new InstrumentFolder(path).append(List.of(SavingChild.note("begun")));
    List<Process> children = new ArrayList<>();
    for (String name : List.of("a", "b")) {
      children.add(start(SavingChild.command(List.of(), SavingChild.classPath(), path, name, 40)));
    }
    List<String> kept = new ArrayList<>();
    for (Process child : children) {
      kept.addAll(lines(child));
      assertThat(child.waitFor(60, TimeUnit.SECONDS)).isTrue();
    }
    assertThat(kept).hasSize(80).noneMatch(line -> line.startsWith("stopped"));
    assertThat(ids(path)).hasSize(81).containsAll(kept);
    assertThat(problems(path)).isEmpty();
  }

  @Test
  void theRightToWriteHasOneHolderAndGoesBackWhenHeIsGone() throws IOException {
    Path path = Files.createDirectory(temp.resolve("locked"));
    WriterLock first = WriterLock.take(path, "Käthe, bench").orElseThrow();
    assertThat(WriterLock.take(path, "Jo")).isEmpty();
    assertThat(WriterLock.holder(path)).isEqualTo("Käthe, bench");
    first.close();
    try (WriterLock second = WriterLock.take(path, "Jo").orElseThrow()) {
      assertThat(WriterLock.holder(path)).isEqualTo("Jo");
      assertThat(second).isNotNull();
    }
  }

  private static boolean succeeds(List<String> command) throws InterruptedException {
    try {
      return start(command).waitFor() == 0;
    } catch (IOException e) {
      return false;
    }
  }
}
