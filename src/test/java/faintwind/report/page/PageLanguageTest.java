package faintwind.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.message.Messages;
import faintwind.message.Translation;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

/** A page says which language it is in and which way it is read, on the screen and on paper. */
class PageLanguageTest {
  private static String page(Messages words) {
    return new Page(new LogWords(words), "Title", "", "").html(html -> html.element("p", "Text"));
  }

  private static String pdfLanguage(String page) throws IOException {
    ByteArrayOutputStream pdf = new ByteArrayOutputStream();
    Pdf.write(page, pdf);
    try (PDDocument document = Loader.loadPDF(pdf.toByteArray())) {
      return document.getDocumentCatalog().getLanguage();
    }
  }

  @Test
  void englishWordsAreSaidToBeEnglishWhateverTheSystemSpeaks() throws IOException {
    String page = page(Messages.of(Locale.forLanguageTag("ar-EG")));
    assertThat(page).contains("lang=\"en\" dir=\"ltr\"");
    assertThat(pdfLanguage(page)).isEqualTo("en");
  }

  @Test
  void anotherLanguageAndItsDirectionAreSaid() throws IOException {
    Translation arabic =
        new Translation(Locale.forLanguageTag("ar"), Translation.Direction.RTL, Map.of(), Map.of());
    String page = page(Messages.in(arabic));
    assertThat(page).contains("lang=\"ar\" dir=\"rtl\"");
    assertThat(pdfLanguage(page)).isEqualTo("ar");
  }

  @Test
  void aTextThatStayedEnglishIsSaidToBeEnglish() {
    Translation arabic =
        new Translation(Locale.forLanguageTag("ar"), Translation.Direction.RTL, Map.of(), Map.of());
    LogWords words = new LogWords(Messages.in(arabic));
    String page =
        new Page(words, "Title", "", "")
            .html(
                html -> {
                  html.element("p", words.text("bench-list.grade.good"));
                  html.table("wide", List.of(), List.of(List.of("[en] good", "0.05")));
                });
    assertThat(page)
        .contains("<p lang=\"en\" dir=\"ltr\">[en] good</p>")
        .contains("<td><span lang=\"en\" dir=\"ltr\">[en] good</span></td>");
  }
}
