package faintwind.files.checklist;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.guide.checklist.Card;
import faintwind.guide.checklist.Caution;
import faintwind.guide.checklist.Condition;
import faintwind.guide.checklist.ProbePoint;
import faintwind.guide.checklist.Question;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.ReadingBand;
import faintwind.guide.checklist.Recorded;
import faintwind.guide.checklist.Remedy;
import faintwind.guide.checklist.Step;
import faintwind.guide.checklist.Tips;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.ReadingVerdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A step from JSON that agrees with its schema; only formulas can still be wrong. */
final class StepJson {
  private final Where where;
  private final List<Problem> problems;

  private StepJson(Where where, List<Problem> problems) {
    this.where = where;
    this.problems = problems;
  }

  static Optional<Step> read(ObjectNode node, Where where, List<Problem> problems) {
    int before = problems.size();
    Step step = new StepJson(where, problems).step(node);
    return problems.size() == before ? Optional.of(step) : Optional.empty();
  }

  static Optional<Remedy> remedy(ObjectNode node, Where where, List<Problem> problems) {
    int before = problems.size();
    String id = node.path("id").asText();
    Condition when = new StepJson(where.atColumn(id), problems).condition(node.path("when"));
    Remedy.Words words =
        new Remedy.Words(
            node.path("cause").asText(), node.path("because").asText(), node.path("todo").asText());
    return problems.size() == before
        ? Optional.of(new Remedy(id, when, node.path("rank").asInt(), words))
        : Optional.empty();
  }

  private Step step(ObjectNode node) {
    Step.Words words =
        new Step.Words(
            node.path("why").asText(),
            texts(node.path("how")),
            node.path("good").asText(),
            texts(node.path("wrong")),
            optional(node, "picture")
                .map(p -> new Step.Picture(p.path("file").asText(), p.path("shows").asText())),
            optional(node, "card").flatMap(card -> Card.ofWord(card.asText())));
    return new Step(
        node.path("id").asText(),
        node.path("title").asText(),
        words,
        list(node.path("cautions"), StepJson::caution),
        new Step.Order(
            texts(node.path("needs")),
            optional(node, "gate").map(JsonNode::asText),
            texts(node.path("behind"))),
        new Step.Kit(texts(node.path("tools")), texts(node.path("parts"))),
        new Step.Asks(
            list(node.path("questions"), this::question),
            list(node.path("readings"), this::reading),
            optional(node, "clock").map(this::clock),
            optional(node, "photo").map(JsonNode::asText)));
  }

  private static Caution caution(JsonNode node) {
    return new Caution(
        node.path("id").asText(),
        Caution.Level.ofWord(node.path("level").asText()).orElse(Caution.Level.INJURE),
        node.path("text").asText(),
        node.path("source").asText());
  }

  private Question question(JsonNode node) {
    return new Question(
        node.path("id").asText(),
        node.path("text").asText(),
        list(
            node.path("choices"),
            choice ->
                new Question.Choice(
                    choice.path("id").asText(),
                    choice.path("text").asText(),
                    optional(choice, "stop").map(JsonNode::asText),
                    texts(choice.path("skips")),
                    list(
                        choice.path("stop_if"),
                        stop ->
                            new Question.StopIf(
                                condition(stop.path("when")), stop.path("text").asText())))));
  }

  private Reading reading(JsonNode node) {
    return new Reading(
        node.path("id").asText(),
        node.path("label").asText(),
        node.path("unit").asText(),
        node.path("expected").asText(),
        list(
            node.path("bands"),
            band ->
                new ReadingBand(
                    ReadingVerdict.ofWord(band.path("verdict").asText())
                        .orElse(ReadingVerdict.STOP),
                    condition(band.path("when")),
                    band.path("words").asText())),
        optional(node, "tips").flatMap(StepJson::tips),
        optional(node, "recorded").flatMap(kind -> Recorded.ofWord(kind.asText())));
  }

  /** The schema has the same closed list of points. */
  private static Optional<Tips> tips(JsonNode node) {
    return ProbePoint.ofWord(node.path("one").asText())
        .flatMap(
            one ->
                ProbePoint.ofWord(node.path("other").asText())
                    .map(other -> new Tips(node.path("scene").asText(), one, other)));
  }

  private Step.ClockSpec clock(JsonNode node) {
    return new Step.ClockSpec(
        node.path("id").asText(),
        node.path("label").asText(),
        condition(node.path("duration_s")),
        node.path("then").asText());
  }

  private Condition condition(JsonNode node) {
    Checked<Condition> parsed = Condition.parse(node.asText(), where);
    problems.addAll(parsed.problems());
    return parsed.fold((value, notes) -> value, p -> new Condition("0", java.util.Set.of()));
  }

  private static Optional<JsonNode> optional(JsonNode node, String key) {
    return Optional.ofNullable(node.get(key));
  }

  private static List<String> texts(JsonNode array) {
    return list(array, JsonNode::asText);
  }

  private static <T> List<T> list(JsonNode array, Function<JsonNode, T> read) {
    List<T> all = new ArrayList<>();
    array.forEach(element -> all.add(read.apply(element)));
    return all;
  }
}
