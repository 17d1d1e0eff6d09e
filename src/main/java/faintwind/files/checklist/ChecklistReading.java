package faintwind.files.checklist;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.files.JsonFile;
import faintwind.files.SchemaCheck;
import faintwind.files.Sha256;
import faintwind.files.language.LanguageFile;
import faintwind.guide.ChecklistRules;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.OwnFile;
import faintwind.guide.checklist.Remedy;
import faintwind.guide.checklist.Stage;
import faintwind.guide.checklist.Step;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Translation;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * One reading of a checklist from folders laid over each other, the first that has a file wins. Its
 * hash is that of the English texts, whatever language it is read in.
 */
final class ChecklistReading {
  private static final String LIST = "checklist.json";
  private static final String REMEDIES = "remedies.json";

  private final List<Path> folders;
  private final Locale language;
  private final List<Problem> problems = new ArrayList<>();
  private final StringBuilder hashed = new StringBuilder();
  private final Set<Path> setAside;
  private final List<OwnFile> own = new ArrayList<>();
  private final List<ChecklistOverlay> overlays = new ArrayList<>();
  private final Map<String, SchemaCheck> checks = new HashMap<>();

  private ChecklistReading(List<Path> folders, Locale language, Set<Path> setAside) {
    this.folders = List.copyOf(folders);
    this.language = language;
    this.setAside = Set.copyOf(setAside);
  }

  /**
   * Refused with all that is wrong.
   *
   * @param setAside files that are passed over, so that those of the next folder count
   */
  static Checked<Checklist> read(List<Path> folders, Locale language, Set<Path> setAside)
      throws IOException {
    return new ChecklistReading(folders, language, setAside).read();
  }

  private Checked<Checklist> read() throws IOException {
    Optional<ObjectNode> list = object(LIST, "checklist");
    if (list.isEmpty()) {
      return Checked.refused(problems);
    }
    readOverlays();
    List<Stage> stages = new ArrayList<>();
    List<String> listed = new ArrayList<>(List.of(LIST));
    for (JsonNode stage : list.get().path("stages")) {
      stages.add(stage((ObjectNode) stage, listed));
    }
    List<Remedy> remedies = remedies();
    overlays.forEach(overlay -> problems.addAll(overlay.problems()));
    unlisted(listed);
    Checklist checklist =
        new Checklist(
                list.get().path("id").asText(),
                list.get().path("version").asText(),
                Sha256.of(hashed.toString().getBytes(StandardCharsets.UTF_8)),
                stages,
                remedies)
            .withOwnFiles(own);
    if (problems.isEmpty()) {
      problems.addAll(ChecklistRules.problems(checklist));
    }
    return problems.isEmpty() ? Checked.ok(checklist) : Checked.refused(problems);
  }

  private Stage stage(ObjectNode stage, List<String> listed) throws IOException {
    String id = stage.path("id").asText();
    List<Step> steps = new ArrayList<>();
    for (JsonNode stepId : stage.path("steps")) {
      String name = id + "/" + stepId.asText() + ".json";
      listed.add(name);
      Optional<ObjectNode> node = object(name, "step");
      if (node.isEmpty()) {
        continue;
      }
      if (!node.get().path("id").asText().equals(stepId.asText())) {
        Where where = Where.file(name).atColumn("id");
        problems.add(
            Problem.error(
                "checklist.id-not-file", where, node.get().path("id").asText(), stepId.asText()));
      }
      translate(node.get(), "steps." + stepId.asText(), name);
      picture(node.get(), name);
      bench(name, node.get());
      Optional<Step> step = StepForm.step(node.get(), Where.file(name), problems);
      step.ifPresent(steps::add);
      if (step.isPresent()) {
        keepsSafety(name, step.get());
      }
    }
    translate(stage, "stages." + id, LIST);
    return new Stage(
        id,
        stage.path("title").asText(),
        stage.path("about").asText(),
        Optional.ofNullable(stage.get("ends")).map(JsonNode::asText),
        Optional.ofNullable(stage.get("banner")).map(JsonNode::asText),
        steps);
  }

  /** The language's files, the first laid over the others; a broken one is a problem. */
  private void readOverlays() throws IOException {
    if (language.equals(Locale.ENGLISH)) {
      return;
    }
    String name = "lang/" + language.toLanguageTag() + ".json";
    for (int i = 0; i < folders.size(); i++) {
      Path file = folders.get(i).resolve(name);
      if (Files.isRegularFile(file) && !setAside.contains(file)) {
        Checked<Translation> read = LanguageFile.read(file, name);
        problems.addAll(read.problems());
        if (read instanceof Checked.Ok<Translation> ok) {
          overlays.add(new ChecklistOverlay(i, name, ok.value()));
        }
      }
    }
  }

  /**
   * Lays the language's texts over what a file says in English. A text of a teacher's own is in the
   * teacher's language: only an overlay beside it, or over it, replaces it.
   */
  private void translate(ObjectNode base, String key, String name) {
    if (language.equals(Locale.ENGLISH)) {
      return;
    }
    int at = folders.indexOf(find(name).map(this::folderOf).orElse(folders.get(0)));
    overlays.forEach(overlay -> overlay.meet(base, key, at));
    Optional<Translation> texts =
        overlays.stream()
            .filter(overlay -> overlay.folder() <= at && overlay.has(key))
            .findFirst()
            .map(ChecklistOverlay::texts);
    if (texts.isPresent() || at == folders.size() - 1) {
      Translation used = texts.orElse(Translation.none(language));
      ChecklistTexts.each(base, key, used::over);
    }
  }

  private Path folderOf(Path file) {
    return folders.stream().filter(file::startsWith).findFirst().orElseThrow();
  }

  private SchemaCheck check(String schema) {
    return checks.computeIfAbsent(schema, SchemaCheck::of);
  }

  /** A step laid over another keeps what protects people in the one below. */
  private void keepsSafety(String name, Step step) throws IOException {
    List<Problem> unneeded = new ArrayList<>();
    below(name)
        .flatMap(node -> StepForm.step(node, Where.file(name), unneeded))
        .ifPresent(below -> problems.addAll(ChecklistRules.dropped(below, step, Where.file(name))));
  }

  /** A step laid over another that says nothing of the bench does to it what the one below does. */
  private void bench(String name, ObjectNode step) throws IOException {
    if (StepForm.BENCH.stream().anyMatch(step::has)) {
      return;
    }
    Optional<ObjectNode> below = below(name);
    for (String key : StepForm.BENCH) {
      below.map(node -> node.get(key)).ifPresent(marks -> step.set(key, marks));
    }
  }

  /** The shipped step that an own file lies over; empty where the step is the shipped one. */
  private Optional<ObjectNode> below(String name) throws IOException {
    Path lowest = folders.get(folders.size() - 1).resolve(name);
    if (find(name).filter(lowest::equals).isPresent() || !Files.isRegularFile(lowest)) {
      return Optional.empty();
    }
    return JsonFile.parse(Files.readAllBytes(lowest), name)
        .fold((node, notes) -> Optional.of(node), broken -> Optional.empty());
  }

  private void picture(ObjectNode step, String name) {
    JsonNode file = step.path("picture").path("file");
    if (file.isMissingNode()) {
      return;
    }
    boolean shipped =
        ChecklistReading.class.getResource("/faintwind/assets/pictures/" + file.asText()) != null;
    boolean own =
        folders.stream()
            .anyMatch(f -> Files.isRegularFile(f.resolve("pictures").resolve(file.asText())));
    if (!shipped && !own) {
      Where where = Where.file(name).atColumn("picture");
      problems.add(Problem.error("checklist.picture-missing", where, file.asText()));
    }
  }

  private List<Remedy> remedies() throws IOException {
    if (find(REMEDIES).isEmpty()) {
      return List.of();
    }
    Optional<ObjectNode> file = object(REMEDIES, "remedies");
    List<Remedy> remedies = new ArrayList<>();
    if (file.isEmpty()) {
      return remedies;
    }
    for (JsonNode item : file.get().path("remedies")) {
      translate((ObjectNode) item, "remedies." + item.path("id").asText(), REMEDIES);
      Where where = Where.file(REMEDIES).atColumn(item.path("id").asText());
      StepForm.read((ObjectNode) item, Remedy.class, where, problems).ifPresent(remedies::add);
    }
    return remedies;
  }

  /** A file in a stage's folder that checklist.json does not list would silently never be done. */
  private void unlisted(List<String> listed) throws IOException {
    for (Path folder : folders) {
      try (Stream<Path> files = Files.walk(folder, 2)) {
        for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
          String name = folder.relativize(file).toString().replace('\\', '/');
          boolean step = name.endsWith(".json") && name.contains("/") && !name.startsWith("lang/");
          if (step && !listed.contains(name) && !setAside.contains(file)) {
            problems.add(Problem.error("checklist.step-not-listed", Where.file(name), name));
          }
        }
      }
    }
  }

  private Optional<Path> find(String name) {
    return folders.stream()
        .map(f -> f.resolve(name))
        .filter(f -> Files.isRegularFile(f) && !setAside.contains(f))
        .findFirst();
  }

  private Optional<ObjectNode> object(String name, String schema) throws IOException {
    Optional<Path> file = find(name);
    if (file.isEmpty()) {
      problems.add(Problem.error("checklist.file-missing", Where.file(name), name));
      return Optional.empty();
    }
    byte[] bytes = Files.readAllBytes(file.get());
    hashed.append(name).append(' ').append(Sha256.of(bytes)).append('\n');
    if (!file.get().startsWith(folders.get(folders.size() - 1))) {
      own.add(new OwnFile(name, Sha256.of(bytes), List.of()));
    }
    Checked<ObjectNode> parsed = JsonFile.parse(bytes, name);
    problems.addAll(parsed.problems());
    if (!(parsed instanceof Checked.Ok<ObjectNode> ok)) {
      return Optional.empty();
    }
    List<Problem> form = check(schema).problems(ok.value(), Where.file(name));
    problems.addAll(form);
    return form.isEmpty() ? Optional.of(ok.value()) : Optional.empty();
  }
}
