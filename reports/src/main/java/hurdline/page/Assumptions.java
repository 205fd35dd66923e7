package hurdline.page;

import hurdline.answer.Fact;
import hurdline.answer.Header;
import hurdline.text.Wording;
import hurdline.text.notes.Notes;
import java.util.List;
import java.util.function.Consumer;

/** The part of a report that says with which settings and on what grounds its figures stand. */
final class Assumptions {
  private Assumptions() {}

  static Section section(Header header, Wording wording, List<Fact> facts) {
    return section(header, wording, html -> {}, facts);
  }

  /**
   * @param between what stands between settings and notes
   */
  static Section section(Header header, Wording wording, Consumer<Html> between, List<Fact> facts) {
    String tables =
        "Tables beside this page are in metric units, a t being 1000 kg, with all digits.";
    return section(header, wording, between, facts, tables);
  }

  /**
   * @param tables a sentence on what lies beside the page
   */
  static Section section(
      Header header, Wording wording, Consumer<Html> between, List<Fact> facts, String tables) {
    return new Section(
        "assumes",
        "What these figures assume",
        true,
        html -> {
          html.table("settings", Settings.grid(header, wording));
          between.accept(html);
          html.notes(new Notes(header, wording).of(facts)).paragraph(tables);
        });
  }
}
