package faintwind.job.design;

import faintwind.files.AtomicFile;
import faintwind.files.design.PartsFile;
import faintwind.message.Field;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.Interval;
import faintwind.physics.advice.PartNeed;
import faintwind.physics.advice.PartsNeeded;
import faintwind.physics.advice.Prices;
import faintwind.physics.design.Design;
import faintwind.physics.sheet.DesignSheet;
import faintwind.physics.sheet.Outcome;
import faintwind.physics.sheet.OutcomeId;
import faintwind.report.page.Pdf;
import faintwind.report.sheet.PartsPage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * What has to be bought for a number of instruments, in general terms ({@link PartsNeeded} counts
 * it), with the prices that were typed: as lines for the window, as CSV, and as a page to print.
 */
public final class PartsList {
  /** How many instruments a list may be for. */
  public static final Field INSTRUMENTS = Field.whole("instruments", 1, 1000).usually("1");

  private static final List<String> HEADS =
      List.of("part", "what", "tolerance", "needed", "spare", "buy", "unit", "look-for");
  private static final List<String> MORE_HEADS = List.of("key", "price", "total", "currency");
  private static final List<OutcomeId> MEASURES =
      List.of(
          OutcomeId.SMALLEST_SPEED,
          OutcomeId.STILL_DELTA,
          OutcomeId.DELTA_AT_1,
          OutcomeId.TIME_CONSTANT_AT_1,
          OutcomeId.HEATED_BALL_TEMPERATURE,
          OutcomeId.BATTERY_TIME);

  private final String name;
  private final DesignSheet sheet;
  private final Prices prices;
  private final Messages words;
  private final List<PartNeed> needs;
  private final PartsWords said;
  private final int instruments;

  /**
   * A list for a design.
   *
   * @param sized the design, what follows from it, and its prices
   * @param instruments how many, 1 or more
   */
  public PartsList(Sized sized, int instruments, Messages words) {
    Design design = sized.design();
    this.name = design.name();
    this.sheet = sized.sheet();
    this.prices = sized.prices();
    this.words = words;
    this.instruments = instruments;
    needs = PartsNeeded.of(design, instruments);
    said = new PartsWords(design, sheet, words);
  }

  /**
   * One part.
   *
   * @param need how much of what
   * @param part what it is for
   * @param what what exactly
   * @param tolerance its tolerance; empty where there is none to mind
   * @param lookFor what to look for when buying
   * @param price for one piece or metre, where one was typed
   * @param unit piece or metre, in words
   */
  public record Line(
      PartNeed need,
      String part,
      String what,
      String tolerance,
      String lookFor,
      OptionalDouble price,
      String unit) {
    /** What the whole line costs; empty without a price. */
    public OptionalDouble total() {
      return price.isPresent()
          ? OptionalDouble.of(price.getAsDouble() * need.buy())
          : OptionalDouble.empty();
    }
  }

  /** Every part. */
  public List<Line> lines() {
    return needs.stream()
        .map(
            need ->
                new Line(
                    need,
                    said.part(need),
                    said.what(need),
                    said.tolerance(need),
                    said.lookFor(need),
                    prices.of(need),
                    said.unit(need)))
        .toList();
  }

  /** What all parts with a price cost. */
  public Prices.Cost cost() {
    return prices.of(needs);
  }

  /** One note for each price that belongs to no part of the list. */
  public List<Problem> strangePrices() {
    List<String> known = needs.stream().map(PartNeed::key).toList();
    return prices.each().keySet().stream()
        .filter(key -> !known.contains(key))
        .sorted()
        .map(
            key ->
                Problem.warning(
                    "parts.price-without-part",
                    Where.NOWHERE.atColumn("prices." + key),
                    key,
                    String.join(", ", known)))
        .toList();
  }

  /** Why nothing on the list should be bought; empty where the design may be built. */
  public Optional<String> stop() {
    if (!sheet.stops()) {
      return Optional.empty();
    }
    return Optional.of(
        words.text(
            "parts.stop",
            sheet.reasons().stream()
                .filter(Problem::isError)
                .map(words::sentence)
                .collect(Collectors.joining(" "))));
  }

  /** The cost in a sentence, after the stop where there is one. */
  public String costWords() {
    return stop().map(s -> s + " " + sum()).orElseGet(this::sum);
  }

  /** The sum, and how many parts are not in it. */
  private String sum() {
    Prices.Cost cost = cost();
    if (cost.without() == needs.size()) {
      return words.text("parts.total.none");
    }
    String sum = (money(cost.sum()) + " " + prices.currency()).strip();
    return cost.without() == 0
        ? words.text("parts.total", sum)
        : words.text("parts.total.without", sum, cost.without());
  }

  /** Money with two decimals. */
  public static String money(double value) {
    return Numerals.places(value, 2);
  }

  /** Header and rows of the CSV. */
  public List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    List<String> heads = new ArrayList<>(HEADS);
    heads.addAll(MORE_HEADS);
    rows.add(heads.stream().map(head -> words.text("parts.head." + head)).toList());
    stop().ifPresent(s -> rows.add(stopRow(s)));
    for (Line line : lines()) {
      List<String> row = new ArrayList<>(cells(line));
      row.add(line.need().key());
      row.add(money(line.price()));
      row.add(money(line.total()));
      row.add(line.price().isPresent() ? prices.currency() : "");
      rows.add(row);
    }
    return rows;
  }

  private static List<String> stopRow(String stop) {
    List<String> row = new ArrayList<>(Collections.nCopies(HEADS.size() + MORE_HEADS.size(), ""));
    row.set(0, stop);
    return row;
  }

  private static List<String> cells(Line line) {
    PartNeed need = line.need();
    return List.of(
        line.part(),
        line.what(),
        line.tolerance(),
        Numerals.digits(need.needed()),
        Numerals.digits(need.spare()),
        Numerals.digits(need.buy()),
        line.unit(),
        line.lookFor());
  }

  private static String money(OptionalDouble value) {
    return value.isPresent() ? money(value.getAsDouble()) : "";
  }

  /** The page to print, XHTML. */
  public String page() {
    List<String> heads = new ArrayList<>(HEADS);
    heads.add("price");
    heads.add("total");
    List<List<String>> rows = new ArrayList<>();
    for (Line line : lines()) {
      List<String> row = new ArrayList<>(cells(line));
      row.add(money(line.price()));
      row.add(money(line.total()));
      rows.add(row);
    }
    return PartsPage.of(
        new PartsPage.Content(
            title(),
            measures(),
            heads.stream().map(head -> words.text("parts.head." + head)).toList(),
            rows,
            costWords()),
        words);
  }

  /** The title stands at the top of every page. */
  private String title() {
    String title = words.text("parts.page.title", name, instruments);
    return sheet.stops() ? words.text("parts.page.title.stop", title) : title;
  }

  /** What the instrument will be able to measure: name, value, range. */
  private List<List<String>> measures() {
    List<List<String>> rows = new ArrayList<>();
    for (OutcomeId id : MEASURES) {
      sheet.quantity(id).map(this::measure).ifPresent(rows::add);
    }
    return rows;
  }

  private List<String> measure(Outcome q) {
    Interval v = q.value();
    return List.of(
        words.text("quantity." + q.id().id()),
        (Numerals.digits(v.nominal()) + " " + q.id().unit()).strip(),
        words.text("design.range", Numerals.digits(v.low()), Numerals.digits(v.high())));
  }

  /**
   * Writes the list, whole or not at all: {@code .html} and {@code .pdf} give the page to print,
   * anything else CSV.
   *
   * @throws IOException where the disk or a permission fails
   */
  public void write(Path target) throws IOException {
    String file = String.valueOf(target.getFileName()).toLowerCase(Locale.ROOT);
    if (file.endsWith(".pdf")) {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      Pdf.write(page(), bytes);
      AtomicFile.write(target, bytes.toByteArray());
    } else if (file.endsWith(".html") || file.endsWith(".htm")) {
      AtomicFile.write(target, page().getBytes(StandardCharsets.UTF_8));
    } else {
      PartsFile.write(target, rows());
    }
  }
}
