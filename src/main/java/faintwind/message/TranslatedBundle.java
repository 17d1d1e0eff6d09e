package faintwind.message;

import java.util.Enumeration;
import java.util.Map;
import java.util.ResourceBundle;
import org.jspecify.annotations.Nullable;

/** A translation as the bundle that layouts and command lines take their words from. */
final class TranslatedBundle extends ResourceBundle {
  private final Map<String, String> texts;

  TranslatedBundle(Translation translation, ResourceBundle english) {
    texts = translation.over(ProgramTexts.of(english), ProgramTexts::onSafety);
    setParent(english); // for the lists that are no words
  }

  @Override
  protected @Nullable Object handleGetObject(String key) {
    return texts.get(key);
  }

  @Override
  public Enumeration<String> getKeys() {
    return parent.getKeys();
  }
}
