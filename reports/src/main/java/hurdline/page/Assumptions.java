package hurdline.page;

import hurdline.answer.Header;
import hurdline.answer.Note;
import hurdline.words.Wording;
import java.util.List;
import java.util.function.Consumer;

/** The part of a report that says with which settings and on what grounds its figures stand. */
final class Assumptions {
  private Assumptions() {}

  static Section section(Header header, Wording wording, List<Note> notes) {
    return section(header, wording, html -> {}, notes);
  }

  /** @param between what stands between settings and notes */
  static Section section(Header header, Wording wording, Consumer<Html> between, List<Note> notes) {
    String tables = "Tables beside this page are in metric units, a t being 1000 kg, with all digits.";
    return section(header, wording, between, notes, tables);
  }

  /** @param tables a sentence on what lies beside the page */
  static Section section(
      Header header, Wording wording, Consumer<Html> between, List<Note> notes, String tables) {
    return new Section(
        "assumes",
        "What these figures assume",
        true,
        html -> {
          html.table("settings", Settings.grid(header, wording));
          between.accept(html);
          html.notes(notes).paragraph(tables);
        });
  }
}
