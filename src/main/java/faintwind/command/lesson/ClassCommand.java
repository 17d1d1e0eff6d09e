package faintwind.command.lesson;

import faintwind.command.CommonOptions;
import faintwind.guide.lesson.SchoolClass;
import faintwind.job.PaperFile;
import faintwind.job.lesson.ClassLook;
import faintwind.job.lesson.ClassPage;
import faintwind.job.lesson.ClassReport;
import faintwind.job.lesson.ClassRules;
import faintwind.job.lesson.ClassText;
import faintwind.job.lesson.LookAtClass;
import faintwind.job.lesson.MakeClass;
import faintwind.job.lesson.NewCode;
import faintwind.job.lesson.PairLook;
import faintwind.job.lesson.PairPrint;
import faintwind.job.lesson.SignOff;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.JournalEntry;
import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import faintwind.terminal.VersionText;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code faintwind class}: a class of pairs, from making it to what it found out. */
@Command(
    name = "class",
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class,
    resourceBundle = "faintwind.messages")
public final class ClassCommand implements Callable<Integer> {

  private final Terminal terminal;
  private final Clock clock = Clock.system(ZoneId.systemDefault());

  @Spec private CommandSpec spec = CommandSpec.create();

  public ClassCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    String known = String.join(", ", spec.subcommands().keySet());
    return terminal.misuse(Problem.error("class.which", Where.NOWHERE, known));
  }

  @Command(name = "create", mixinStandardHelpOptions = true, resourceBundle = "faintwind.messages")
  int create(@Mixin CreateOptions options) throws IOException {
    Checked<MakeClass.Wish> wish = options.wish(terminal.messages());
    if (!(wish instanceof Checked.Ok<MakeClass.Wish> ok)) {
      terminal.report(wish.problems());
      return ExitCode.USAGE.number();
    }
    Checked<SchoolClass> made =
        new MakeClass(clock, terminal.messages()).make(options.folder(), ok.value());
    if (!(made instanceof Checked.Ok<SchoolClass> done)) {
      return terminal.refuse(made.problems());
    }
    terminal.report(done.notes());
    terminal.say("class.made", done.value().pairs().size(), options.folder().toString());
    return ExitCode.DONE.number();
  }

  @Command(name = "show", mixinStandardHelpOptions = true, resourceBundle = "faintwind.messages")
  int show(
      @Parameters(paramLabel = "FOLDER", descriptionKey = "faintwind.class.folder") Path folder,
      @Option(names = "--json", descriptionKey = "json") boolean json,
      @Option(names = "--html", paramLabel = "FILE", descriptionKey = "faintwind.class.html")
          @Nullable Path html,
      @Mixin CommonOptions common)
      throws IOException {
    return looked(
        folder,
        Optional.ofNullable(html),
        common,
        look -> {
          ClassText text = new ClassText(terminal.messages());
          if (json) {
            terminal.out().print(forPrograms(folder, look));
          } else {
            text.lines(look).forEach(terminal.out()::println);
          }
          terminal.out().flush();
          if (html != null) {
            PaperFile.write(html, new ClassPage(terminal.messages()).of(look));
            terminal.tell("air.written", html.toString());
          }
          return ExitCode.DONE.number();
        });
  }

  /** The same in every language; looked at again where another one is spoken. */
  private String forPrograms(Path folder, ClassLook look) throws IOException {
    Messages words = Terminal.forPrograms();
    if (words.locale().equals(terminal.messages().locale())) {
      return new ClassText(words).json(look);
    }
    return new ClassText(words)
        .json(
            new LookAtClass(folder, words)
                .look(OffsetDateTime.now(clock))
                .fold((same, notes) -> same, problems -> look));
  }

  @Command(name = "lesson", mixinStandardHelpOptions = true, resourceBundle = "faintwind.messages")
  int lesson(
      @Parameters(paramLabel = "FOLDER", descriptionKey = "faintwind.class.folder") Path folder,
      @Option(names = "--minutes", paramLabel = "N", descriptionKey = "faintwind.class.minutes")
          @Nullable Integer minutes,
      @Option(names = "--pair", paramLabel = "N", descriptionKey = "faintwind.class.pair-print")
          @Nullable Integer pair,
      @Option(names = "--out", paramLabel = "FILE", descriptionKey = "faintwind.class.out")
          @Nullable Path out,
      @Mixin CommonOptions common)
      throws IOException {
    Optional<Problem> bad =
        Optional.ofNullable(minutes)
            .flatMap(m -> ClassRules.MINUTES.trouble(String.valueOf(m), Where.NOWHERE));
    if (bad.isPresent()) {
      return terminal.misuse(bad.get());
    }
    return looked(
        folder,
        Optional.ofNullable(out),
        common,
        look -> {
          int time = minutes == null ? look.minutes() : minutes;
          Optional<PairLook> one =
              look.pairs().stream()
                  .filter(p -> pair != null && pair > 0 && p.pair().number() == pair)
                  .findFirst();
          if (pair != null && one.isEmpty()) {
            return terminal.refuse(
                List.of(Problem.error("class.unknown-pair", Where.NOWHERE, String.valueOf(pair))));
          }
          if (out != null) {
            return one.isEmpty()
                ? printAll(look, time, out, common)
                : print(look, one.get(), time, out);
          }
          ClassText text = new ClassText(terminal.messages());
          terminal.out().println(text.lesson(look));
          if (minutes != null) {
            terminal.say("class.minutes-asked", minutes);
          }
          text.fits(one.map(look::of).orElse(look), time).forEach(terminal.out()::println);
          return ExitCode.DONE.number();
        });
  }

  /** A print for every pair, where none of the files is there. */
  private int printAll(ClassLook look, int minutes, Path out, CommonOptions common)
      throws IOException {
    for (PairLook pair : look.pairs().stream().filter(p -> p.pair().number() > 0).toList()) {
      Optional<Problem> trouble = common.output(PairPrint.beside(out, pair)).trouble(List.of());
      if (trouble.isPresent()) {
        return terminal.misuse(trouble.get());
      }
    }
    Checked<List<Path>> written =
        new PairPrint(clock, terminal.messages()).writeAll(look, minutes, out);
    if (!(written instanceof Checked.Ok<List<Path>> ok)) {
      return terminal.refuse(written.problems());
    }
    ok.value().forEach(file -> terminal.say("air.written", file.toString()));
    return ExitCode.DONE.number();
  }

  private int print(ClassLook look, PairLook pair, int minutes, Path out) throws IOException {
    Checked<Path> written =
        new PairPrint(clock, terminal.messages()).write(look, pair, minutes, out);
    if (!written.isOk()) {
      return terminal.refuse(written.problems());
    }
    terminal.say("air.written", out.toString());
    return ExitCode.DONE.number();
  }

  @Command(name = "labels", mixinStandardHelpOptions = true, resourceBundle = "faintwind.messages")
  int labels(@Mixin PaperOptions options) throws IOException {
    return paper(options, new ClassPage(terminal.messages())::labels);
  }

  @Command(name = "report", mixinStandardHelpOptions = true, resourceBundle = "faintwind.messages")
  int report(@Mixin PaperOptions options) throws IOException {
    return paper(options, new ClassReport(terminal.messages())::of);
  }

  @Command(name = "sign", mixinStandardHelpOptions = true, resourceBundle = "faintwind.messages")
  int sign(@Mixin SignOptions options) throws IOException {
    Checked<JournalEntry> signed =
        new SignOff(options.folder(), clock, terminal.messages())
            .sign(options.signed(), options.code());
    return terminal.end(signed, it -> terminal.say("note.entered", it.id()));
  }

  @Command(name = "code", mixinStandardHelpOptions = true, resourceBundle = "faintwind.messages")
  int code(
      @Parameters(paramLabel = "FOLDER", descriptionKey = "faintwind.class.folder") Path folder,
      @Option(
              names = "--code",
              paramLabel = "CODE",
              defaultValue = "",
              descriptionKey = "faintwind.class.old-code")
          String old,
      @Option(
              names = "--new",
              required = true,
              paramLabel = "CODE",
              descriptionKey = "faintwind.class.new-code")
          String fresh)
      throws IOException {
    Checked<String> set = new NewCode(folder, terminal.messages()).set(old, fresh);
    return terminal.end(set, name -> terminal.say("class.code-set", name));
  }

  private interface Shown {
    int of(ClassLook look) throws IOException;
  }

  private interface Paper {
    String of(ClassLook look) throws IOException;
  }

  private int paper(PaperOptions options, Paper paper) throws IOException {
    return looked(
        options.folder(),
        Optional.of(options.out()),
        options.common(),
        look -> {
          PaperFile.write(options.out(), paper.of(look));
          terminal.say("air.written", options.out().toString());
          return ExitCode.DONE.number();
        });
  }

  private int looked(Path folder, Optional<Path> out, CommonOptions common, Shown shown)
      throws IOException {
    Optional<Problem> trouble = Optional.empty();
    if (out.isPresent()) {
      trouble = common.output(out.get()).trouble(List.of(folder));
    }
    if (trouble.isPresent()) {
      return terminal.misuse(trouble.get());
    }
    Checked<ClassLook> look =
        new LookAtClass(folder, terminal.messages()).look(OffsetDateTime.now(clock));
    return look instanceof Checked.Ok<ClassLook> ok
        ? shown.of(ok.value())
        : terminal.refuse(look.problems());
  }
}
