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
            "Baled stalks burn, and damp bales and modules can heat and light themselves. A load"
                + " that is hot, smokes or smells burnt stays out of yard and gin, and the insurer's"
                + " steps for hot bales are followed: a hot bale can break into fire weeks later."
                + " Stack sizes, lanes between stacks, distance to buildings and water for fighting"
                + " a fire follow the local fire code and the insurer, not this report. A yard that"
                + " is full here need not be a yard that is allowed."),
        new Note(
            "Fiber bales are not cotton bales",
            "Fire codes may exempt densely packed bales of cotton; hemp, tow, jute and kenaf are"
                + " combustible fibers without that exemption (International Fire Code, chapter on"
                + " combustible fibers). The local fire code decides how and how much may be"
                + " stored."),
        new Note(
            "Dust",
            "Dry dust of stalk, hurd and lint burns, and in the air it can explode. Dust"
                + " collection, housekeeping, spark detection, a dust hazard analysis (NFPA 660) and"
                + " electrical equipment follow the local fire code, the insurer and a licensed"
                + " engineer's design. Ducts and cyclones built for lint need that engineer's word"
                + " before they carry hurd dust."),
        new Note(
            "Sparks and tramp metal",
            "Stones, wire and bolts in a bale strike sparks in saw cylinders and hammer mills, and"
                + " a spark travels with the air into bins, cyclones and bales. Magnets, traps and"
                + " spark detection belong before the mill and before what stores."),
        new Note(
            "Dust in the lungs",
            "Dust of hemp, flax, kenaf and cotton harms the lungs. The cotton dust standard of the"
                + " USA (29 CFR 1910, section 1043) leaves out ginning and says nothing of hemp; which limits"
                + " and which protection hold is for an industrial hygienist and local law."),
        new Note(
            "Machines",
            "Every stop, choke, screen change and cleaning is planned here as time in which the"
                + " machine is locked out and seen to stand still: saw cylinders, fans and mills"
                + " coast after the power is off, and the local rules for lock-out (in the USA 29"
                + " CFR 1910, section 147) hold. No shorter time is to be won by reaching into a machine that"
                + " runs, coasts or can start."),
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
