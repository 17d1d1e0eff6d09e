package faintwind.job.lesson;

import faintwind.files.JsonForm;
import faintwind.guide.StepState;
import faintwind.guide.Today;
import faintwind.guide.checklist.Stage;
import faintwind.guide.lesson.SchoolClass.Lesson;
import faintwind.guide.lesson.Spread;
import faintwind.job.bench.BenchRow;
import faintwind.job.bench.BenchText;
import faintwind.job.step.TodayText;
import faintwind.message.DateText;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** A class in words: who is where and stuck on what, the turntable, clocks, spread. */
public final class ClassText {
  private static final int DIGITS = 3;

  private final Messages words;
  private final BenchText bench;
  private final ClassWords names;

  public ClassText(Messages words) {
    this.words = words;
    bench = new BenchText(words);
    names = new ClassWords(words);
  }

  /** Everything, a line each; a blank line between its parts. */
  public List<String> lines(ClassLook look) {
    List<String> lines = new ArrayList<>();
    lines.add(title(look));
    look.trouble().map(t -> words.text("class.all-gone", t)).ifPresent(lines::add);
    lines.add(lesson(look));
    part(lines, "class.part.pairs", look.pairs().stream().map(this::pair).toList());
    part(lines, "class.part.queue", queue(look));
    part(lines, "class.part.clocks", clocks(look));
    part(lines, "class.part.spread", spread(look));
    return lines;
  }

  private void part(List<String> lines, String head, List<String> of) {
    if (!of.isEmpty()) {
      lines.add("");
      lines.add(words.text(head));
      of.forEach(line -> lines.add("  " + line));
    }
  }

  /** The class and what it is for. */
  public String title(ClassLook look) {
    String purpose = look.it().purpose();
    return purpose.isBlank()
        ? words.text("class.title", look.it().name(), look.it().pairs().size())
        : words.text("class.title-for", look.it().name(), look.it().pairs().size(), purpose);
  }

  /** The lesson that runs or comes next, with the roles in it. */
  public String lesson(ClassLook look) {
    return look.lesson().map(lesson -> lesson(look, lesson)).orElse(words.text("class.no-lesson"));
  }

  private String lesson(ClassLook look, Lesson lesson) {
    String said = names.lesson(look.it(), lesson);
    List<String> roles = look.it().rolesIn(look.it().number(lesson));
    return roles.isEmpty() ? said : words.text("class.roles", said, String.join("; ", roles));
  }

  /** A pair: its stages in short, and what it is stuck on or does. */
  public String pair(PairLook pair) {
    return words.text("class.line", pair.label(), marks(pair), state(pair));
  }

  /** What a pair is stuck on, or does. */
  public String state(PairLook pair) {
    List<String> said = new ArrayList<>();
    pair.trouble().ifPresent(said::add);
    if (pair.trouble().isEmpty()) {
      pair.known().map(known -> need(known.looked().row())).ifPresent(said::add);
    }
    if (pair.trouble().isEmpty() && pair.known().flatMap(PairLook.Known::toExplain).isPresent()) {
      said.add(words.text("class.unmet"));
    }
    said.addAll(pair.remarks());
    return said.stream().map(ClassText::ended).collect(Collectors.joining(" "));
  }

  /** With the stop that a sentence needs before another. */
  private static String ended(String sentence) {
    boolean open =
        !sentence.isEmpty() && ".!?:;…".indexOf(sentence.charAt(sentence.length() - 1)) < 0;
    return open ? sentence + "." : sentence;
  }

  /** The name on the board: on the projector nothing but the number. */
  public String label(PairLook pair, boolean numberOnly) {
    return numberOnly && pair.pair().number() > 0
        ? words.text("class.pair", pair.pair().number())
        : pair.label();
  }

  /** What a pair is at, in a word. */
  public String shortState(PairLook pair) {
    return pair.trouble().isPresent()
        ? words.text("class.folder-trouble")
        : pair.known().map(known -> bench.kind(known.looked().row())).orElse("");
  }

  /** The stage a pair is at; empty where nothing presses. */
  public static Optional<Stage> stage(PairLook.Known known) {
    String title = known.looked().row().need().stage();
    return known.looked().view().checklist().stages().stream()
        .filter(stage -> stage.title().equals(title))
        .findFirst();
  }

  /** Where a pair works now: at the turntable at its time in this lesson, else in its stage. */
  public String where(ClassLook look, PairLook pair) {
    return look.queue().stream()
        .filter(turn -> turn.pair().equals(pair))
        .filter(turn -> turn.lesson().isPresent() && turn.lesson().equals(look.lesson()))
        .findFirst()
        .map(turn -> words.text("class.turns", from(turn), to(turn)))
        .orElse(pair.known().flatMap(ClassText::stage).map(Stage::title).orElse(""));
  }

  private static String from(ClassLook.Turn turn) {
    LocalDateTime begin = turn.lesson().orElseThrow().at();
    return DateText.clock(begin.plusMinutes(Math.round(turn.from())));
  }

  private static String to(ClassLook.Turn turn) {
    LocalDateTime begin = turn.lesson().orElseThrow().at();
    return DateText.clock(begin.plusMinutes(Math.round(turn.from() + turn.minutes())));
  }

  /** Whether a pair needs somebody: its folder tells nothing, or it was stopped or is in doubt. */
  public static boolean isStuck(PairLook pair) {
    return pair.trouble().isPresent()
        || pair.known()
            .map(known -> known.looked().row().need().kind())
            .filter(k -> k == BenchRow.Kind.STOP || k == BenchRow.Kind.ATTENTION)
            .isPresent();
  }

  private String need(BenchRow row) {
    String reason = row.need().reason();
    return reason.isEmpty() ? bench.need(row) + "." : bench.need(row) + ". " + reason;
  }

  /** Stages as figures: how many of their steps are done. */
  private String marks(PairLook pair) {
    return pair.known()
        .map(
            known ->
                known.looked().view().checklist().stages().stream()
                    .filter(stage -> known.stage(stage) != StepState.NOT_NEEDED)
                    .map(stage -> known.share(stage))
                    .collect(Collectors.joining(" ")))
        .orElse("");
  }

  /** The stages as the columns of the matrix are headed; those of the first pair that is known. */
  public static List<Stage> stages(ClassLook look) {
    return look.pairs().stream()
        .flatMap(pair -> pair.known().stream())
        .findFirst()
        .map(known -> known.looked().view().checklist().stages())
        .orElse(List.of());
  }

  /** Who turns when, from the beginning of the lesson. */
  public List<String> queue(ClassLook look) {
    return look.queue().stream().map(turn -> turn(look, turn)).toList();
  }

  private String turn(ClassLook look, ClassLook.Turn turn) {
    String label = turn.pair().label();
    long from = Math.round(turn.from());
    long minutes = Math.round(turn.minutes());
    if (turn.lesson().isEmpty()) {
      return look.it().lessons().isEmpty()
          ? words.text("class.turn", label, from, from + minutes)
          : words.text("class.turn-late", label, minutes);
    }
    Lesson lesson = turn.lesson().get();
    String said =
        words.text("class.turn-lesson", label, look.it().number(lesson), from(turn), to(turn));
    return turn.isTooLong() ? words.text("class.turn-long", said, minutes, lesson.minutes()) : said;
  }

  /** What cures, until when, and which lesson finds it done. */
  public List<String> clocks(ClassLook look) {
    return look.cures().stream().map(cure -> clock(look, cure)).toList();
  }

  private String clock(ClassLook look, ClassLook.Cure cure) {
    String until = DateText.minute(words, cure.clock().ends());
    return cure.before()
        .map(
            lesson ->
                words.text(
                    "class.cure",
                    cure.pair().label(),
                    cure.clock().label(),
                    until,
                    look.it().number(lesson)))
        .orElse(words.text("class.cure-late", cure.pair().label(), cure.clock().label(), until));
  }

  /** How far the instruments lie apart, who lies outside and what is likely to be the cause. */
  public List<String> spread(ClassLook look) {
    List<String> lines = new ArrayList<>();
    for (Quantity quantity : look.quantities()) {
      spread(quantity, look.spread(quantity).orElseThrow(), lines);
    }
    return lines;
  }

  void spread(Quantity quantity, Spread spread, List<String> lines) {
    if (spread.values().size() == 1) {
      String name = words.text("class.quantity." + quantity.word());
      String value = Numerals.digits(spread.median(), DIGITS);
      lines.add(words.text("class.spread-one", name, value, quantity.unit()));
      return;
    }
    lines.add(apart(quantity, spread));
    if (spread.isOfFew()) {
      lines.add(few(quantity, spread));
    }
    spread.outside().entrySet().stream()
        .filter(one -> quantity.isFault(one.getValue(), spread, one.getKey()))
        .forEach(one -> lines.add(outside(quantity, spread, one.getKey(), one.getValue())));
  }

  private String apart(Quantity quantity, Spread spread) {
    String name = words.text("class.quantity." + quantity.word());
    int count = spread.values().size();
    return spread.isLeast()
        ? words.text(
            "class.spread-least", name, shown(spread, spread.median()), quantity.unit(), count)
        : words.text(
            "class.spread",
            name,
            shown(spread, spread.median()),
            Numerals.digits(spread.deviation(), 2),
            quantity.unit(),
            count);
  }

  private String few(Quantity quantity, Spread spread) {
    List<Double> sorted = spread.values().values().stream().sorted().toList();
    return words.text(
        "class.spread-few",
        shown(spread, sorted.get(0)),
        shown(spread, sorted.get(sorted.size() - 1)),
        quantity.unit());
  }

  /** With the digits that tell one value from another. */
  private static String shown(Spread spread, double value) {
    return Numerals.beside(spread.deviation(), 1, value);
  }

  private String outside(Quantity quantity, Spread spread, int pair, double score) {
    return words.text(
        "class.outside",
        pair,
        shown(spread, Optional.ofNullable(spread.values().get(pair)).orElseThrow()),
        quantity.unit(),
        words.text("class.cause." + quantity.word() + (score > 0 ? ".high" : ".low")));
  }

  /** What fits into the minutes there are, pair by pair: they work side by side. */
  public List<String> fits(ClassLook look, int minutes) {
    List<String> lines = new ArrayList<>();
    for (PairLook pair : look.pairs()) {
      if (pair.trouble().isEmpty()) {
        today(pair, look, minutes)
            .ifPresent(today -> lines.add(words.text("class.fits", pair.label(), steps(today))));
      }
    }
    return lines;
  }

  private String steps(Today today) {
    return today.items().isEmpty()
        ? today
            .next()
            .map(item -> words.text("class.fits-not", item.step().step().title(), item.minutes()))
            .orElse(words.text("class.fits-nothing"))
        : today.items().stream()
            .map(item -> words.text("class.step", item.step().step().title(), item.minutes()))
            .collect(Collectors.joining("; "));
  }

  /** The plan of one pair for a lesson. */
  static Optional<Today> today(PairLook pair, ClassLook look, int minutes) {
    return pair.known()
        .flatMap(known -> TodayText.bench(known.looked().view(), look.now()))
        .map(bench -> Today.of(List.of(bench), minutes));
  }

  /** For another program. */
  public String json(ClassLook look) {
    List<Told> told = look.pairs().stream().map(this::told).toList();
    return JsonForm.text(
            new All("faintwind-class-look/1", look.it().name(), told, queue(look), spread(look)))
        .replace('\u00a0', ' ');
  }

  private Told told(PairLook pair) {
    Map<String, String> stages =
        pair.known()
            .map(
                known ->
                    known.looked().view().checklist().stages().stream()
                        .collect(Collectors.toMap(s -> s.id(), s -> known.stage(s).word())))
            .orElse(Map.of());
    return new Told(
        pair.pair().number(),
        pair.pair().folder(),
        pair.trouble(),
        pair.remarks(),
        pair.known().map(known -> known.looked().row().need()),
        stages);
  }

  private record All(
      String format, String name, List<Told> pairs, List<String> queue, List<String> spread) {}

  private record Told(
      int number,
      String folder,
      Optional<String> trouble,
      List<String> remarks,
      Optional<BenchRow.Need> need,
      Map<String, String> stages) {}
}
