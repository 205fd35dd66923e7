package hurdline.page;

import hurdline.answer.Answer;
import hurdline.answer.Fact;
import hurdline.problem.LocatedProblem;
import hurdline.text.Wording;
import hurdline.text.notes.Note;
import hurdline.text.notes.Notes;
import java.util.List;

/** What can hurt someone and no figure of a report speaks about; it stands on every page. */
final class Cautions {
  private Cautions() {}

  /**
   * The last part of a report: what this very plant adds to that, and what its file is warned of.
   *
   * @param own of the plant
   */
  static Section section(Answer answer, Wording wording, List<Fact> own) {
    return section(
        answer, wording, own, answer.warnings().stream().map(LocatedProblem::text).toList());
  }

  /**
   * @param warnings what {@code check} warns of and what else is odd, whole lines
   */
  static Section section(Answer answer, Wording wording, List<Fact> own, List<String> warnings) {
    List<Note> notes = new Notes(answer.header(), wording).of(own);
    return new Section("cautions", "Cautions", true, html -> write(html, notes, warnings));
  }

  private static void write(Html html, List<Note> own, List<String> warnings) {
    html.notes(own);
    if (!warnings.isEmpty()) {
      html.paragraph("The plant file gives warnings:").list(warnings);
    }
    html.notes(standing());
  }

  static List<Note> standing() {
    return List.of(
        new Note(
            "Fire in the yard",
            "Baled stalks burn, and damp bales can heat and light themselves. Stack sizes, lanes"
                + " between stacks, distance to buildings and water for fighting a fire follow the"
                + " local fire code and the insurer, not this report. A yard that is full here need"
                + " not be a yard that is allowed."),
        new Note(
            "Dust",
            "Dry dust of stalk, hurd and lint burns, and in the air it can explode. Dust"
                + " collection, housekeeping, spark detection and electrical equipment follow the"
                + " local fire code, the insurer and a licensed engineer's design."),
        new Note(
            "Machines",
            "Every stop, choke, screen change and cleaning is planned here as time in which the"
                + " machine is locked out and at rest. No shorter time is to be won by reaching"
                + " into a machine that runs or can start."),
        new Note(
            "Hours and wages",
            "Shifts, rests and wages are what the plant file says. Whether they are allowed is for"
                + " local labor law and agreements."),
        new Note(
            "Planning only",
            "Rates, ground areas and money are figures to plan by. They are no design by a licensed"
                + " engineer and no offer to a lender."));
  }
}
