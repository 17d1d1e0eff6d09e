package faintwind.files;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonInclude.Include;
import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.cfg.MapperConfig;
import com.fasterxml.jackson.databind.introspect.AnnotatedClass;
import com.fasterxml.jackson.databind.introspect.JacksonAnnotationIntrospector;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * Binds JSON with the records it stands for. A component {@code turnsTime_s} is the key {@code
 * turns_time_s}; where a key differs, or an object is flat in the file and grouped in the program,
 * a <em>form</em> says so: an interface whose methods have the names of the components and carry
 * Jackson's annotations. What may be missing is {@code Optional} and then left out; a missing text
 * is empty, a missing list has no elements; a constant {@code AT_LEAST} is the word {@code
 * at-least}; unknown keys are passed over.
 *
 * <p>Nothing is doubted here: what is read has been compared with its schema and its rules before,
 * so that all that is wrong is told at once and with its place.
 */
public final class JsonForm {
  private final JsonMapper mapper;

  /** What was prepared for a type at its first need: a journal asks for each of its lines. */
  private final Map<Class<?>, ObjectReader> readers = new ConcurrentHashMap<>();

  /**
   * A binding.
   *
   * @param forms by the type they speak of
   */
  public JsonForm(Map<Class<?>, Class<?>> forms) {
    this.mapper =
        JsonMapper.builder()
            .addModule(new Jdk8Module())
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .disable(MapperFeature.AUTO_DETECT_IS_GETTERS)
            .defaultPropertyInclusion(
                JsonInclude.Value.construct(Include.NON_ABSENT, Include.ALWAYS))
            .propertyNamingStrategy(new KeyNaming())
            .annotationIntrospector(new Words())
            .build();
    for (Class<?> type : List.of(String.class, List.class, Map.class)) {
      mapper.configOverride(type).setSetterInfo(JsonSetter.Value.forValueNulls(Nulls.AS_EMPTY));
    }
    forms.forEach(mapper::addMixIn);
  }

  /** Finds out how a type is read, which takes longer than reading one. */
  public void prepare(Class<?> type) {
    readers.computeIfAbsent(type, mapper::readerFor);
  }

  public <T> T read(JsonNode json, Class<T> type) {
    try {
      return readers.computeIfAbsent(type, mapper::readerFor).readValue(json);
    } catch (IOException e) {
      throw new IllegalArgumentException("not checked before it was read: " + e.getMessage(), e);
    }
  }

  public ObjectNode write(Object value) {
    return mapper.valueToTree(value);
  }

  /** A record as the text of a JSON object, for another program. */
  public static String text(Object value) {
    return new JsonForm(Map.of()).write(value).toPrettyString() + "\n";
  }

  /** Lower case with underscores up to the unit, which stays as it is. */
  private static final class KeyNaming extends PropertyNamingStrategies.NamingBase {
    private static final long serialVersionUID = 1L;

    @Override
    public String translate(String name) {
      int unit = name.indexOf('_') < 0 ? name.length() : name.indexOf('_');
      StringBuilder key = new StringBuilder();
      for (char c : name.substring(0, unit).toCharArray()) {
        key.append(Character.isUpperCase(c) ? "_" + Character.toLowerCase(c) : c);
      }
      return key + name.substring(unit);
    }
  }

  /** Constants in lower case with hyphens, where no form has another word. */
  private static final class Words extends JacksonAnnotationIntrospector {
    private static final long serialVersionUID = 1L;

    @Override
    public String[] findEnumValues(
        MapperConfig<?> config, AnnotatedClass type, Enum<?>[] values, @Nullable String[] names) {
      super.findEnumValues(config, type, values, names);
      for (int i = 0; i < values.length; i++) {
        if (names[i] == null) {
          names[i] = values[i].name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
      }
      return names;
    }
  }
}
