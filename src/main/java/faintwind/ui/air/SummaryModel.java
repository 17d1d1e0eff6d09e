package faintwind.ui.air;

import faintwind.calibration.field.FieldSummary;
import faintwind.calibration.field.StretchMean;
import faintwind.job.air.AirInputs;
import faintwind.job.air.AirSource;
import faintwind.job.air.ResultFile;
import faintwind.job.air.Summary;
import faintwind.job.air.SummaryPicture;
import faintwind.job.air.SummaryTable;
import faintwind.message.Amount;
import faintwind.message.Checked;
import faintwind.message.Field;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.ui.frame.DataModel;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import faintwind.ui.part.NumberModel;
import faintwind.ui.work.Background;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** The figures of a converted log, to be looked at and saved. */
public final class SummaryModel extends DataModel<SummaryModel.View> {
  private final Background background;
  private final Function<String, Optional<Path>> askTarget;
  private final AirWays ways;
  private final NumberModel calm;
  private final NumberModel limit;
  private Optional<ConvertedLog> log = Optional.empty();
  private String saved = "";

  /**
   * What there is to show.
   *
   * @param summary the figures; empty where no log was chosen, or it is refused
   * @param name of the log
   * @param problems sentences with their place
   */
  public record View(Optional<Summary> summary, String name, List<String> problems) {
    static final View NOTHING = new View(Optional.empty(), "", List.of());

    public View {
      problems = List.copyOf(problems);
    }
  }

  /** A kind of file that the figures go into. */
  public enum Saved {
    CSV,
    SVG,
    PNG
  }

  /**
   * A model without figures; it begins with the log that was converted last.
   *
   * @param askTarget asks where a file goes, given a name
   */
  public SummaryModel(
      Messages words,
      Background background,
      Function<String, Optional<Path>> askTarget,
      AirWays ways) {
    super(words, View.NOTHING);
    this.background = background;
    this.askTarget = askTarget;
    this.ways = ways;
    calm = new NumberModel("m/s", words);
    calm.set(Field.plain(FieldSummary.Wanted.CALM_M_S));
    limit = new NumberModel("m/s", words);
    say();
    ways.lastLog().ifPresent(this::open);
    for (NumberModel number : List.of(calm, limit)) {
      number.judged().addListener((property, was, now) -> log.ifPresent(this::open));
    }
  }

  /** Below this it is calm. */
  public NumberModel calm() {
    return calm;
  }

  /** A speed that is asked about. */
  public NumberModel limit() {
    return limit;
  }

  /** Works out the figures of a log that a person chose. */
  public void open(Path speeds) {
    open(ways.log(speeds));
  }

  private void open(ConvertedLog from) {
    log = Optional.of(from);
    saved = "";
    String name = String.valueOf(from.speeds().getFileName());
    List<Problem> wrong = new ArrayList<>();
    double calm_m_s = number(calm, wrong).orElse(FieldSummary.Wanted.CALM_M_S);
    List<Double> limits_m_s = number(limit, wrong).stream().toList();
    if (!wrong.isEmpty()) {
      put(new View(Optional.empty(), name, lines(wrong)));
      say();
      return;
    }
    AirInputs inputs =
        new AirInputs(Optional.of(from.speeds()), from.calibration(), Optional.empty());
    background.run(
        watch -> work(inputs, name, limits_m_s, calm_m_s),
        found -> {
          put(
              found.fold(
                  (summary, notes) -> new View(Optional.of(summary), name, lines(notes)),
                  problems -> new View(Optional.empty(), name, lines(problems))));
          say();
        },
        broke -> problem(from.speeds(), broke));
  }

  private static Checked<Summary> work(
      AirInputs inputs, String name, List<Double> limits_m_s, double calm_m_s) throws IOException {
    Checked<AirSource> source = inputs.open();
    return source.then(from -> Summary.of(from, name, limits_m_s, calm_m_s));
  }

  private static Optional<Double> number(NumberModel model, List<Problem> wrong) {
    Optional<Double> value =
        model.amount().filter(a -> a.bound() == Amount.Bound.EXACT).map(Amount::value);
    value
        .flatMap(v -> StretchMean.SPEED.trouble(Field.plain(v), Where.NOWHERE))
        .ifPresent(wrong::add);
    return value;
  }

  private void problem(Path file, IOException broke) {
    put(new View(view().get().summary(), view().get().name(), List.of(failed(file, broke))));
    say();
  }

  /** Writes the figures where the person says. */
  public void save(Saved kind) {
    Optional<Summary> summary = view().get().summary();
    String stem = view().get().name().replaceFirst("\\.csv$", "");
    String ending = "." + kind.name().toLowerCase(Locale.ROOT);
    if (summary.isPresent()) {
      askTarget
          .apply(stem + "-summary" + ending)
          .ifPresent(target -> write(summary.get(), kind, target));
    }
  }

  private void write(Summary summary, Saved kind, Path target) {
    background.run(
        watch -> {
          if (kind == Saved.CSV) {
            ResultFile.write(target, SummaryTable.of(summary));
          } else {
            SummaryPicture.write(target, summary, words());
          }
          return target;
        },
        written -> {
          saved = String.valueOf(written);
          say();
        },
        broke -> problem(target, broke));
  }

  private void say() {
    View now = view().get();
    if (now.summary().isEmpty()) {
      say(
          now.problems().isEmpty()
              ? Next.say(Mark.READY, text("air.summary.next"))
              : Next.say(Mark.BLOCKED, text("air.summary.refused")));
      return;
    }
    Next next =
        saved.isEmpty()
            ? Next.say(Mark.DONE, text("air.summary.save"), act(Saved.CSV))
            : Next.say(Mark.DONE, text("field.next.saved", saved)).withOther(act(Saved.CSV));
    say(next.withOther(act(Saved.SVG)).withOther(act(Saved.PNG)));
  }

  private Act act(Saved kind) {
    String word = kind.name().toLowerCase(Locale.ROOT);
    return new Act("summary-" + word, text("air.summary." + word), () -> save(kind));
  }
}
