package faintwind.files.asset;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonInclude.Include;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import com.fasterxml.jackson.annotation.JsonValue;
import com.fasterxml.jackson.databind.annotation.JsonDeserialize;
import com.fasterxml.jackson.databind.annotation.JsonSerialize;
import com.fasterxml.jackson.databind.util.StdConverter;
import faintwind.calibration.profile.ColumnRef;
import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.profile.LineForm;
import faintwind.calibration.profile.Meaning;
import faintwind.calibration.profile.TimeColumn;
import faintwind.calibration.profile.TimeForm;
import faintwind.calibration.profile.ValueColumn;
import faintwind.calibration.profile.ValueUnit;
import faintwind.files.JsonForm;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The keys of an import profile. */
interface ProfileForm {
  JsonForm JSON =
      new JsonForm(
          Map.of(
              ImportProfile.class, ProfileForm.class,
              LineForm.class, Line.class,
              TimeColumn.class, Time.class,
              ValueColumn.class, Column.class,
              ValueColumn.Around.class, Around.class,
              ColumnRef.class, Ref.class,
              TimeForm.class, Word.class,
              Meaning.class, Word.class,
              ValueUnit.class, Word.class));

  @JsonUnwrapped
  LineForm lines();

  interface Line {
    @JsonSerialize(converter = ToWord.class)
    @JsonDeserialize(converter = FromWord.class)
    char delimiter();

    @JsonInclude(Include.NON_EMPTY)
    String comment();

    @JsonInclude(Include.NON_EMPTY)
    List<String> missing();
  }

  interface Time {
    @JsonSerialize(contentConverter = FromZone.class)
    @JsonDeserialize(contentConverter = ToZone.class)
    Optional<ZoneId> zone();

    @JsonProperty("as")
    TimeForm form();

    @JsonProperty("date_column")
    Optional<ColumnRef> date();

    @JsonInclude(Include.NON_EMPTY)
    String pattern();
  }

  interface Column {
    @JsonProperty("means")
    Meaning meaning();

    @JsonInclude(value = Include.CUSTOM, valueFilter = One.class)
    double scale();

    @JsonInclude(Include.NON_DEFAULT)
    double shift();

    @JsonUnwrapped
    ValueColumn.Around around();
  }

  interface Around {
    @JsonInclude(Include.NON_EMPTY)
    String before();

    @JsonInclude(Include.NON_EMPTY)
    String after();
  }

  @JsonSerialize(converter = FromRef.class)
  @JsonDeserialize(converter = ToRef.class)
  interface Ref {}

  interface Word {
    @JsonValue
    String word();
  }

  /** Is equal to the scale that is left out. */
  final class One {
    @Override
    public boolean equals(Object scale) {
      return scale.equals(1.0);
    }

    @Override
    public int hashCode() {
      return 1;
    }
  }

  /** The word of a delimiter. */
  final class ToWord extends StdConverter<Character, String> {
    @Override
    public String convert(Character delimiter) {
      return LineForm.word(delimiter);
    }
  }

  /** The delimiter of a word. */
  final class FromWord extends StdConverter<String, Character> {
    @Override
    public Character convert(String word) {
      return switch (word) {
        case "tab" -> '\t';
        case "space" -> ' ';
        default -> word.charAt(0);
      };
    }
  }

  /** The name of a zone. */
  final class FromZone extends StdConverter<ZoneId, String> {
    @Override
    public String convert(ZoneId zone) {
      return zone.getId();
    }
  }

  /** The zone of a name. */
  final class ToZone extends StdConverter<String, ZoneId> {
    @Override
    public ZoneId convert(String name) {
      return ZoneId.of(name);
    }
  }

  /** A name or a number. */
  final class FromRef extends StdConverter<ColumnRef, Object> {
    @Override
    public Object convert(ColumnRef ref) {
      return ref.isNamed() ? ref.name() : (Object) ref.number();
    }
  }

  /** A name or a number. */
  final class ToRef extends StdConverter<Object, ColumnRef> {
    @Override
    public ColumnRef convert(Object value) {
      return value instanceof Number number
          ? ColumnRef.numbered(number.intValue())
          : ColumnRef.named(value.toString().strip());
    }
  }
}
