package faintwind.ui.design;

import faintwind.job.design.DesignAdvice;
import faintwind.message.Amount;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.physics.advice.Suggestion;
import faintwind.physics.advice.Wish;
import faintwind.physics.design.Design;
import faintwind.physics.design.TouchLimit;
import faintwind.physics.design.Use;
import faintwind.physics.part.Catalogue;
import faintwind.physics.part.LoggerProfile;
import faintwind.ui.part.NumberModel;
import faintwind.ui.work.Background;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** What a person wants an instrument to do, and the designs that do it. */
public final class DesignWishModel {
  private final Messages words;
  private final Background background;
  private final NumberModel slowest;
  private final NumberModel response;
  private final Map<Pick, StringProperty> picks = new EnumMap<>(Pick.class);
  private final ReadOnlyObjectWrapper<Answer> answer = new ReadOnlyObjectWrapper<>(Answer.NOT_YET);
  private Optional<Present> present = Optional.empty();
  private List<String> known = List.of();
  private long asked;

  /** What is picked from a list. */
  public enum Pick {
    PLACE,
    CONTACT,
    LOGGER,
    SPEND
  }

  /**
   * What was found.
   *
   * @param known whether anything was worked out yet
   * @param suggestions the designs; none where nothing safe can be made
   */
  public record Answer(boolean known, List<Suggestion> suggestions) {
    static final Answer NOT_YET = new Answer(false, List.of());

    public Answer {
      suggestions = List.copyOf(suggestions);
    }
  }

  private record Present(Design design, Catalogue parts) {}

  DesignWishModel(Messages words, Background background) {
    this.words = words;
    this.background = background;
    slowest = new NumberModel("m/s", words);
    response = new NumberModel("s", words);
    for (Pick pick : Pick.values()) {
      picks.put(pick, new SimpleStringProperty(""));
    }
    slowest.judged().addListener((property, was, now) -> ask());
    response.judged().addListener((property, was, now) -> ask());
    picks.values().forEach(p -> p.addListener((property, was, now) -> ask()));
  }

  public NumberModel slowest() {
    return slowest;
  }

  public NumberModel response() {
    return response;
  }

  /** The id picked. */
  public StringProperty pick(Pick pick) {
    StringProperty found = picks.get(pick);
    if (found == null) {
      throw new IllegalArgumentException("no choice " + pick);
    }
    return found;
  }

  public ReadOnlyObjectProperty<Answer> answer() {
    return answer.getReadOnlyProperty();
  }

  /** Begins with what the present design is for; asks only at the first time. */
  void begin(Design design, Catalogue parts) {
    boolean first = present.isEmpty();
    present = Optional.of(new Present(design, parts));
    if (!first) {
      return;
    }
    present = Optional.empty(); // nothing is asked until all is filled in
    slowest.set(Numerals.digits(design.use().slowest_m_s()));
    response.set(Numerals.digits(DesignAdvice.USUAL_RESPONSE_S));
    pick(Pick.PLACE).set(design.use().place().name().toLowerCase(Locale.ROOT));
    pick(Pick.CONTACT).set(seconds(design.use().contact_s()));
    pick(Pick.LOGGER).set(design.sense().logger().label().id());
    boolean plated = design.ball().plating().isPresent();
    pick(Pick.SPEND).set(plated ? "some" : "little");
    present = Optional.of(new Present(design, parts));
    taken();
    ask();
  }

  private List<String> said() {
    List<String> said = new ArrayList<>(List.of(slowest.typed().get(), response.typed().get()));
    picks.values().forEach(pick -> said.add(pick.get()));
    return said;
  }

  /** A design was taken for what is said now. */
  void taken() {
    known = said();
  }

  /** Whether something else is said than when a design was taken last. */
  boolean isChanged() {
    return !known.isEmpty() && !known.equals(said());
  }

  private static String seconds(double contact_s) {
    return TouchLimit.thresholds().stream()
        .mapToDouble(TouchLimit.Threshold::contact_s)
        .filter(s -> contact_s <= s)
        .mapToObj(s -> String.valueOf(Math.round(s)))
        .findFirst()
        .orElse("28800");
  }

  /** What there is to pick from. */
  List<DesignChoices.Option> options(Pick pick, Catalogue parts) {
    return switch (pick) {
      case PLACE ->
          worded(
              "design.place.",
              List.of("indoors", "narrow", "shade", "sun", "classroom", "reachable"));
      case SPEND -> worded("design.spend.", List.of("little", "some"));
      case CONTACT ->
          TouchLimit.thresholds().stream()
              .map(
                  t ->
                      new DesignChoices.Option(
                          seconds(t.contact_s()),
                          words.text(
                              "design.contact." + seconds(t.contact_s()),
                              Numerals.digits(t.temperature_C()))))
              .toList();
      case LOGGER -> {
        List<DesignChoices.Option> all = new ArrayList<>();
        loggers(parts)
            .forEach(l -> all.add(new DesignChoices.Option(l.label().id(), l.label().name())));
        yield all;
      }
    };
  }

  /** The logger of the present design may be one that no file describes. */
  private List<LoggerProfile> loggers(Catalogue parts) {
    List<LoggerProfile> all = new ArrayList<>(parts.loggers());
    present
        .map(p -> p.design().sense().logger())
        .filter(own -> parts.logger(own.label().id()).isEmpty())
        .ifPresent(all::add);
    return all;
  }

  private List<DesignChoices.Option> worded(String prefix, List<String> ids) {
    return ids.stream().map(id -> new DesignChoices.Option(id, words.text(prefix + id))).toList();
  }

  private void ask() {
    Optional<Wish> wish = present.flatMap(this::wish);
    if (wish.isEmpty()) {
      return;
    }
    long turn = ++asked;
    Catalogue parts = present.orElseThrow().parts();
    answer.set(Answer.NOT_YET);
    background.entry(
        watch -> DesignAdvice.suggestions(wish.get(), parts),
        found -> {
          if (turn == asked) {
            answer.set(new Answer(true, found));
          }
        },
        world -> {}); // nothing is read or written
  }

  private Optional<Wish> wish(Present now) {
    Optional<Double> slow = positive(slowest);
    Optional<Double> quick = positive(response);
    Optional<LoggerProfile> logger =
        loggers(now.parts()).stream()
            .filter(l -> l.label().id().equals(pick(Pick.LOGGER).get()))
            .findFirst();
    if (slow.isEmpty() || quick.isEmpty() || logger.isEmpty()) {
      return Optional.empty();
    }
    Use before = now.design().use();
    Use use =
        before.wanted(
            Use.Place.valueOf(pick(Pick.PLACE).get().toUpperCase(Locale.ROOT)),
            Double.parseDouble(pick(Pick.CONTACT).get()),
            slow.get(),
            Math.max(before.fastest_m_s(), 2 * slow.get()));
    Wish.AtHand atHand =
        new Wish.AtHand(
            logger.get(),
            now.design().sense().gain(),
            now.design().sense().averaging_s(),
            now.design().supply());
    Wish.Spend spend = Wish.Spend.valueOf(pick(Pick.SPEND).get().toUpperCase(Locale.ROOT));
    return Optional.of(new Wish(use, quick.get(), atHand, now.design().air(), spend));
  }

  private static Optional<Double> positive(NumberModel number) {
    return DesignChoices.exact(number).map(Amount::value).filter(v -> v > 0);
  }
}
