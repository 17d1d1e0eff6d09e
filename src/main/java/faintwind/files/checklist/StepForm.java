package faintwind.files.checklist;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import com.fasterxml.jackson.databind.annotation.JsonDeserialize;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.util.StdConverter;
import faintwind.files.JsonForm;
import faintwind.guide.checklist.Bench;
import faintwind.guide.checklist.Condition;
import faintwind.guide.checklist.Question;
import faintwind.guide.checklist.Remedy;
import faintwind.guide.checklist.Step;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The keys of a step and of a remedy: flat in the file, grouped in the program. */
interface StepForm {
  /** What a step says of the bench. */
  List<String> BENCH = List.of("asks", "during", "leaves");

  JsonForm JSON =
      new JsonForm(
          Map.of(
              Step.class, StepForm.class,
              Question.Choice.class, Choice.class,
              Remedy.class, Cause.class,
              Bench.Mark.class, Mark.class,
              Condition.class, Formula.class));

  @JsonUnwrapped
  Step.Words text();

  @JsonUnwrapped
  Step.Order order();

  @JsonUnwrapped
  Step.Kit kit();

  @JsonUnwrapped
  Step.Asks asks();

  interface Choice {
    @JsonProperty("stop_if")
    List<Question.StopIf> stopsIf();
  }

  interface Cause {
    @JsonUnwrapped
    Remedy.Words words();
  }

  @JsonDeserialize(converter = Parsed.class)
  interface Formula {}

  @JsonDeserialize(converter = Marked.class)
  interface Mark {}

  /** A fact of the schema's closed list. */
  final class Marked extends StdConverter<String, Bench.Mark> {
    @Override
    public Bench.Mark convert(String word) {
      return Bench.Mark.ofWord(word).orElseThrow(() -> new IllegalArgumentException(word));
    }
  }

  /** A formula that was found to be one before. */
  final class Parsed extends StdConverter<String, Condition> {
    @Override
    public Condition convert(String text) {
      return Condition.parse(text, Where.NOWHERE)
          .fold(
              (condition, notes) -> condition,
              problems -> {
                throw new IllegalArgumentException(problems.toString());
              });
    }
  }

  /**
   * A step that agrees with its schema; what it does on the bench is flat in the file.
   *
   * @param problems where a wrong formula is told
   */
  static Optional<Step> step(ObjectNode node, Where where, List<Problem> problems) {
    ObjectNode grouped = node.deepCopy();
    ObjectNode bench = grouped.putObject("bench");
    for (String key : BENCH) {
      Optional.ofNullable(grouped.remove(key)).ifPresent(marks -> bench.set(key, marks));
    }
    return read(grouped, Step.class, where, problems);
  }

  /**
   * What stands in an object that agrees with its schema; empty where a formula in it is wrong.
   *
   * @param problems where that is told
   */
  static <T> Optional<T> read(ObjectNode node, Class<T> type, Where where, List<Problem> problems) {
    List<String> formulas = new ArrayList<>(node.findValuesAsText("when"));
    formulas.addAll(node.findValuesAsText("duration_s"));
    int before = problems.size();
    formulas.forEach(formula -> problems.addAll(Condition.parse(formula, where).problems()));
    return problems.size() == before ? Optional.of(JSON.read(node, type)) : Optional.empty();
  }
}
