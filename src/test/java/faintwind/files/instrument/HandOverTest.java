package faintwind.files.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.Sha256;
import faintwind.files.instrument.PackedFile.Manifest;
import faintwind.job.record.HandOver;
import faintwind.job.record.HandOver.TakenIn;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.record.Event;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HandOverTest {
  private static final OffsetDateTime AT = OffsetDateTime.parse("2026-03-02T09:00:00+01:00");
  @TempDir Path temp;
  private Path folder;
  private Path archive;

  @BeforeEach
  void anInstrumentWithAFile() throws IOException {
    folder = temp.resolve("mine/rind");
    archive = temp.resolve("rind.zip");
    InstrumentFolder begun =
        InstrumentFolder.create(folder, entry("e1", new Event.InstrumentCreated("Rind 1", true)));
    Files.writeString(folder.resolve("runs/a.csv"), "time_s,delta_K\n0,1\n");
    begun.append(
        List.of(
            entry(
                "e2",
                new Event.FileAdded(
                    Event.FileRole.RUN, "runs/a.csv", Sha256.of(folder.resolve("runs/a.csv"))))));
  }

  private static JournalEntry entry(String id, Event event) {
    return new JournalEntry(id, AT, "Käthe", Optional.empty(), event);
  }

  private static <T> T ok(Checked<T> checked) {
    return checked.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems.toString());
        });
  }

  private static List<String> ids(Checked<?> checked) {
    return checked.problems().stream().map(Problem::id).toList();
  }

  private List<String> inTheirs() throws IOException {
    Path theirs = temp.resolve("theirs");
    if (!Files.exists(theirs)) {
      return List.of();
    }
    try (Stream<Path> all = Files.list(theirs)) {
      return all.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  private Checked<TakenIn> unpack() throws IOException {
    return HandOver.unpack(archive, temp.resolve("theirs"));
  }

  @Test
  void anArchiveDoesNotGoIntoTheFolderItPacks() throws IOException {
    Path within = folder.resolve("runs/../rind.zip");
    assertThat(ids(HandOver.pack(folder, within))).containsExactly("pack.inside");
    assertThat(folder.resolve("rind.zip")).doesNotExist();
    assertThat(ids(HandOver.pack(folder, archive))).isEmpty();
  }

  @Test
  void whatIsPackedIsTakenInByteForByte() throws IOException {
    Files.writeString(folder.resolve("writer.lock"), "Käthe");
    String head = ok(HandOver.pack(folder, archive));
    TakenIn taken = ok(unpack());
    assertThat(taken.head()).isEqualTo(head);
    assertThat(taken.folder()).isEqualTo(temp.resolve("theirs/rind-1"));
    for (String name : List.of("journal.jsonl", "instrument.json", "runs/a.csv")) {
      assertThat(taken.folder().resolve(name)).hasSameBinaryContentAs(folder.resolve(name));
    }
    assertThat(taken.folder().resolve("writer.lock")).doesNotExist();
    assertThat(new InstrumentFolder(taken.folder()).audit().problems()).isEmpty();
    assertThat(inTheirs()).containsExactly("rind-1");
  }

  @Test
  void anAlteredInstrumentIsNotHandedOver() throws IOException {
    Files.writeString(folder.resolve("runs/a.csv"), "time_s,delta_K\n0,2\n");
    assertThat(ids(HandOver.pack(folder, archive))).containsExactly("folder.file-changed");
    assertThat(archive).doesNotExist();
  }

  @Test
  void theVerySameIsNotTakenInTwiceAndAnotherStandIsKeptBeside() throws IOException {
    ok(HandOver.pack(folder, archive));
    ok(unpack());
    assertThat(ids(unpack())).containsExactly("unpack.there-already");
    Path theirs = temp.resolve("theirs/rind-1");
    new InstrumentFolder(folder).append(List.of(entry("e3", new Event.NoteWritten("on"))));
    Files.delete(archive);
    ok(HandOver.pack(folder, archive));
    assertThat(ids(unpack())).containsExactly("unpack.newer");
    new InstrumentFolder(theirs).append(List.of(entry("x3", new Event.NoteWritten("else"))));
    new InstrumentFolder(folder).append(List.of(entry("e4", new Event.NoteWritten("on"))));
    Files.delete(archive);
    ok(HandOver.pack(folder, archive));
    assertThat(ids(unpack())).containsExactlyInAnyOrder("unpack.parted", "unpack.newer");
    assertThat(inTheirs()).containsExactly("rind-1", "rind-1-2", "rind-1-3");
    assertThat(Journal.in(theirs).content().entries()).hasSize(3);
  }

  @Test
  void anotherInstrumentOfTheSameNameKeepsItsFolder() throws IOException {
    InstrumentFolder.create(
        temp.resolve("theirs/rind-1"), entry("z1", new Event.InstrumentCreated("Rind 1", false)));
    ok(HandOver.pack(folder, archive));
    Checked<TakenIn> taken = unpack();
    assertThat(ids(taken)).isEmpty();
    assertThat(ok(taken).folder()).isEqualTo(temp.resolve("theirs/rind-1-2"));
  }

  @Test
  void everyAlteredByteOfAnArchiveIsFoundOrDoesNoHarm() throws IOException {
    ok(HandOver.pack(folder, archive));
    byte[] whole = Files.readAllBytes(archive);
    Random random = new Random(20261128);
    int found = 0;
    for (int i = 0; i < 200; i++) {
      byte[] altered = whole.clone();
      altered[random.nextInt(altered.length)] ^= (byte) (1 + random.nextInt(255));
      Files.write(archive, altered);
      Checked<TakenIn> taken = unpack();
      if (taken instanceof Checked.Ok<TakenIn> ok) {
        // times and attributes of the ZIP's own lists are no part of the instrument
        assertThat(new InstrumentFolder(ok.value().folder()).audit().problems()).isEmpty();
        assertThat(ok.value().head()).isEqualTo(Journal.in(folder).content().head());
        UnpackFolder.delete(ok.value().folder());
      } else {
        found++;
      }
      assertThat(inTheirs()).isEmpty();
    }
    assertThat(found).isGreaterThan(100);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../evil.txt",
        "/etc/evil.txt",
        "a/../../evil.txt",
        "a\\..\\..\\evil.txt",
        "C:/evil.txt",
        "a//b",
        "./a",
        "a\u0000b",
        "writer.lock",
        "a/",
        "nul\n"
      })
  void aNameThatLeadsElsewhereIsRefusedAndNothingIsWritten(String name) throws IOException {
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put(name, new byte[] {1});
    archive(files, List.of(), Map.of());
    assertThat(ids(unpack())).contains("unpack.name");
    assertThat(inTheirs()).isEmpty();
    assertThat(temp.resolve("evil.txt")).doesNotExist();
  }

  @Test
  void whatIsNotListedMissingTwiceOrLargerThanListedIsRefused() throws IOException {
    archive(Map.of("a.txt", new byte[] {1}), List.of("b.txt"), Map.of());
    assertThat(ids(unpack())).contains("unpack.not-listed");
    archive(Map.of("a.txt", new byte[100]), List.of(), Map.of("a.txt", 10L));
    assertThat(ids(unpack())).contains("unpack.altered");
    archive(Map.of("a.txt", new byte[1], "A.TXT", new byte[1]), List.of(), Map.of());
    assertThat(ids(unpack())).contains("unpack.name-twice");
    Files.writeString(archive, "not a zip at all");
    assertThat(ids(unpack())).containsExactly("unpack.no-archive");
    assertThat(inTheirs()).isEmpty();
  }

  @Test
  void aBombIsRefusedUnpacked() throws IOException {
    archive(Map.of("zeros.csv", new byte[40 << 20]), List.of(), Map.of());
    assertThat(Files.size(archive)).isLessThan(1 << 20);
    assertThat(ids(unpack())).containsExactly("unpack.ratio");
    archive(Map.of("a.txt", new byte[1]), List.of(), Map.of("a.txt", 5L << 30));
    assertThat(ids(unpack())).contains("unpack.too-large");
    assertThat(inTheirs()).isEmpty();
  }

  /** An entry that says it is a link comes out as a plain file or not at all. */
  @Test
  void noLinkIsEverMade() throws IOException {
    ok(HandOver.pack(folder, archive));
    byte[] bytes = Files.readAllBytes(archive);
    int attributes = 0;
    for (int i = 0; i + 46 < bytes.length; i++) {
      if (bytes[i] == 'P' && bytes[i + 1] == 'K' && bytes[i + 2] == 1 && bytes[i + 3] == 2) {
        bytes[i + 5] = 3; // made by Unix
        bytes[i + 40] = (byte) 0xFF;
        bytes[i + 41] = (byte) 0xA1; // a symbolic link
        attributes++;
      }
    }
    assertThat(attributes).isGreaterThan(3);
    Files.write(archive, bytes);
    Checked<TakenIn> taken = unpack();
    if (taken instanceof Checked.Ok<TakenIn> ok) {
      try (Stream<Path> all = Files.walk(ok.value().folder())) {
        assertThat(all.filter(Files::isSymbolicLink)).isEmpty();
      }
    }
  }

  /** An archive with these files, further ones that are not listed, and sizes that are not true. */
  private void archive(Map<String, byte[]> files, List<String> unlisted, Map<String, Long> sizes)
      throws IOException {
    List<PackedFile> listed = new ArrayList<>();
    files.forEach(
        (name, bytes) ->
            listed.add(
                new PackedFile(
                    name, sizes.getOrDefault(name, (long) bytes.length), Sha256.of(bytes))));
    try (OutputStream out = Files.newOutputStream(archive);
        ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8)) {
      put(zip, Manifest.NAME, new Manifest("evil", "0".repeat(64), listed).sealed());
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        put(zip, "files/" + file.getKey(), file.getValue());
      }
      for (String name : unlisted) {
        put(zip, "files/" + name, new byte[] {1});
      }
    }
  }

  private static void put(ZipOutputStream zip, String name, byte[] bytes) throws IOException {
    zip.putNextEntry(new ZipEntry(name));
    zip.write(bytes);
    zip.closeEntry();
  }
}
