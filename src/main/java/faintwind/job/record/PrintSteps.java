package faintwind.job.record;

import faintwind.files.checklist.ChecklistFiles;
import faintwind.guide.checklist.Step;
import faintwind.job.EnteredFile;
import faintwind.job.PaperFile;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event.FileRole;
import faintwind.report.picture.PictureWords;
import faintwind.report.sheet.StepSheetContent;
import faintwind.report.sheet.StepSheets;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts steps of an instrument on paper, as HTML or as PDF by the target's ending. */
public final class PrintSteps {
  private static final String PICTURES = "/faintwind/assets/pictures/";

  private final Clock clock;
  private final Messages messages;

  public PrintSteps(Clock clock, Messages messages) {
    this.clock = clock;
    this.messages = messages;
  }

  /** What is printed. */
  public enum Extent {
    STEP,
    STAGE,
    ALL
  }

  /**
   * What is printed, by id.
   *
   * @param extent a step, a stage or everything
   * @param id of the step or stage; empty for everything
   */
  public record Wanted(Extent extent, String id) {
    /** Every stage. */
    public static final Wanted ALL = new Wanted(Extent.ALL, "");
  }

  /**
   * Writes a page into the instrument's own folder, {@code reports/steps/ID.pdf}; an earlier one is
   * replaced.
   *
   * @throws IOException where the disk or a permission fails
   */
  public Checked<Path> keep(InstrumentView view, Wanted wanted) throws IOException {
    String name = wanted.extent() == Extent.ALL ? "all" : wanted.id();
    Path target = view.path().resolve("reports/steps/" + name + ".pdf");
    Checked<List<StepSheetContent.Part>> parts = parts(view, wanted);
    if (!(parts instanceof Checked.Ok<List<StepSheetContent.Part>> ok)) {
      return Checked.refused(parts.problems());
    }
    Files.createDirectories(view.path().resolve("reports/steps"));
    Checked<Path> written = writeParts(view, ok.value(), target);
    if (written.isOk()) {
      EnteredFile.note(view.path(), FileRole.REPORT, target, OffsetDateTime.now(clock));
    }
    return written;
  }

  /**
   * Writes a page, whole or not at all.
   *
   * @param folder of the instrument
   * @param target {@code .pdf} gives PDF, anything else HTML
   * @return refused where there is no such step or stage, or the checklist cannot be read
   * @throws IOException where the disk or a permission fails
   */
  public Checked<Path> write(Path folder, Wanted wanted, Path target) throws IOException {
    Checked<InstrumentView> opened = InstrumentView.begun(folder, messages.locale());
    if (!(opened instanceof Checked.Ok<InstrumentView> ok)) {
      return Checked.refused(opened.problems());
    }
    InstrumentView view = ok.value();
    Checked<List<StepSheetContent.Part>> parts = parts(view, wanted);
    return parts instanceof Checked.Ok<List<StepSheetContent.Part>> found
        ? writeParts(view, found.value(), target)
        : Checked.refused(parts.problems());
  }

  /**
   * Writes the sheets of some steps, in the order given.
   *
   * @throws IOException where the disk or a permission fails
   */
  public Checked<Path> write(InstrumentView view, List<String> steps, Path target)
      throws IOException {
    List<StepSheetContent.Part> parts = new ArrayList<>();
    steps.forEach(
        id -> StepSheetContent.ofStep(view.checklist(), id).ifPresent(part -> parts.addAll(part)));
    return writeParts(view, parts, target);
  }

  private Checked<Path> writeParts(
      InstrumentView view, List<StepSheetContent.Part> parts, Path target) throws IOException {
    String html = new StepSheets(messages).html(content(view, parts));
    PaperFile.write(target, html);
    return Checked.ok(target, view.problems());
  }

  private StepSheetContent content(InstrumentView view, List<StepSheetContent.Part> parts)
      throws IOException {
    String name = view.state().name().orElseGet(() -> String.valueOf(view.path().getFileName()));
    return new StepSheetContent(
        name,
        view.checklist(),
        view.situation(OffsetDateTime.now(clock)),
        parts,
        pictures(view.path(), parts));
  }

  /** The drawings of the steps; one of the teacher's own lies beside the own checklist. */
  private Map<String, String> pictures(Path folder, List<StepSheetContent.Part> parts)
      throws IOException {
    Map<String, String> pictures = new HashMap<>();
    for (StepSheetContent.Part part : parts) {
      for (Step step : part.steps()) {
        Optional<String> file =
            step.text().picture().map(Step.Picture::file).filter(name -> name.endsWith(".svg"));
        if (file.isPresent()) {
          picture(folder, file.get()).ifPresent(svg -> pictures.put(file.get(), svg));
        }
      }
    }
    return pictures;
  }

  private Optional<String> picture(Path folder, String file) throws IOException {
    for (Path around : ChecklistFiles.ownFolders(folder)) {
      Path own = around.resolve("checklist").resolve("pictures").resolve(file);
      if (Files.isRegularFile(own)) {
        return Optional.of(Files.readString(own));
      }
    }
    try (InputStream shipped = PrintSteps.class.getResourceAsStream(PICTURES + file)) {
      return shipped == null
          ? Optional.empty()
          : Optional.of(
              PictureWords.in(
                  messages, new String(shipped.readAllBytes(), StandardCharsets.UTF_8)));
    }
  }

  private static Checked<List<StepSheetContent.Part>> parts(InstrumentView view, Wanted wanted) {
    Optional<List<StepSheetContent.Part>> found =
        switch (wanted.extent()) {
          case STEP -> StepSheetContent.ofStep(view.checklist(), wanted.id());
          case STAGE -> StepSheetContent.ofStage(view.checklist(), wanted.id());
          case ALL -> Optional.of(StepSheetContent.ofAll(view.checklist()));
        };
    if (found.isPresent()) {
      return Checked.ok(found.get());
    }
    String known =
        wanted.extent() == Extent.STAGE
            ? String.join(", ", view.checklist().stages().stream().map(s -> s.id()).toList())
            : String.join(", ", view.checklist().steps().stream().map(s -> s.id()).toList());
    String id = wanted.extent() == Extent.STAGE ? "print.unknown-stage" : "print.unknown-step";
    return Checked.refused(Problem.error(id, Where.NOWHERE, wanted.id(), known));
  }
}
