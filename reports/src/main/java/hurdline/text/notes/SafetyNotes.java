package hurdline.text.notes;

import hurdline.answer.SafetyFact;
import hurdline.answer.Titles;
import hurdline.text.Wording;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * What in this very plant can hurt someone, and what to ask the fire official, in whole sentences.
 */
final class SafetyNotes {
  private final Wording wording;

  SafetyNotes(Wording wording) {
    this.wording = wording;
  }

  void addTo(Sentences sentences) {
    sentences
        .tell(SafetyFact.WetBales.class, "Wet bales", this::wetBales)
        .tell(SafetyFact.DampPlaces.class, "Damp places", this::dampPlaces)
        .tell(SafetyFact.ShortStops.class, "Short stops", this::shortStops)
        .tell(SafetyFact.LockedOutWork.class, "Locked-out work", this::lockedOut)
        .tell(SafetyFact.SparksAndDust.class, "Sparks and dust", this::dust)
        .tell(SafetyFact.LongShifts.class, "Long and night shifts", this::longShifts)
        .tell(
            SafetyFact.StoredInPlace.class,
            fact ->
                new Note(Titles.capital(wording.titles().placeInText(fact.place())), place(fact)))
        .tell(
            SafetyFact.StoredInBin.class,
            fact ->
                new Note(Titles.capital(wording.titles().machineInText(fact.bin())), bin(fact)));
  }

  /** Without the limit, which the file's warning gives beside it. */
  private String wetBales(SafetyFact.WetBales fact) {
    return "One bale or module in ten or more is damp by the limit that the warning names: "
        + names(fact.crops(), wording.titles()::cropInText)
        + ". Damp ones heat, rot and can set themselves on fire days or weeks later: measure before"
        + " stacking, keep them apart, watch their temperature. The local fire code and the insurer"
        + " decide.";
  }

  private String dampPlaces(SafetyFact.DampPlaces fact) {
    return "Bales that came dry may come to be damp here by the limit that the warning names: "
        + names(fact.places(), wording.titles()::place)
        + ". The moisture in the answer is the mean of a bale; its wettest part is wetter. Measure"
        + " before bales are moved under a roof or fed, and watch the temperature of stacks. The"
        + " local fire code and the insurer decide.";
  }

  private String shortStops(SafetyFact.ShortStops fact) {
    return "These stops are planned to last less than "
        + wording.plain(fact.belowS() / 60)
        + " minutes on average: "
        + names(fact.stops(), wording.titles()::causeLabel)
        + ". Bringing a machine to rest, locking it out, clearing it and trying the start take"
        + " their time; if less than that was measured, look at how the work is done before the"
        + " figure is used.";
  }

  private String lockedOut(SafetyFact.LockedOutWork fact) {
    String which =
        fact.machines().stream()
            .map(
                of ->
                    wording.titles().machineInText(of.machine())
                        + " ("
                        + names(of.stops(), Titles::ofName)
                        + ")")
            .collect(Collectors.joining(", "));
    return "Clearing, changing and cleaning at "
        + which
        + " is planned as time in which the machine is at rest and locked out, guards back on"
        + " before it starts. A choke is never cleared on a machine that can start.";
  }

  private String dust(SafetyFact.SparksAndDust fact) {
    return "Milling makes sparks where a stone or a bolt comes through, and fine dust gathers: "
        + names(fact.machines(), of -> Titles.inText(wording.titles().machine(of)))
        + ". Magnets, spark detection, explosion relief and housekeeping follow the local fire"
        + " code, the insurer and a licensed engineer's design; this plan sizes none of them.";
  }

  private String longShifts(SafetyFact.LongShifts fact) {
    return "More than "
        + wording.plain(fact.aboveS() / 3600)
        + " hours or past midnight: "
        + names(fact.shifts(), wording.titles()::shift)
        + ". Whether such shifts, their rests and their pay are allowed is for local labor law"
        + " and agreements; tired people get hurt at machines more often.";
  }

  private String place(SafetyFact.StoredInPlace fact) {
    return "As the file has it "
        + wording.titles().placeInText(fact.place())
        + " holds "
        + wording.count(fact.holds())
        + " "
        + fact.unit()
        + ", some "
        + wording.rough(fact.massKg() / 1000, "t")
        + ". "
        + (fact.perStack() > 0
            ? "They stand in stacks of "
                + wording.count(fact.perStack())
                + " with lanes of "
                + wording.rough(fact.laneM(), "m")
                + ", as the file says. Is a stack of that size allowed, is the lane wide enough,"
                + " and how far must stacks be from buildings, roads, lines and the property line?"
            : "The file does not say how they are parted. May so much lie in one block or under one"
                + " roof, and if not, how large may a block be, how wide the lanes, and what fire"
                + " walls, sprinklers and water does it take?");
  }

  private String bin(SafetyFact.StoredInBin fact) {
    String holds =
        Double.isNaN(fact.massKg())
            ? wording.rough(fact.volumeM3(), "m3")
            : wording.rough(fact.massKg() / 1000, "t");
    return "It holds "
        + holds
        + ". May so much loose material stand in one bin, indoors or beside the building, and which"
        + " explosion relief, spark detection and distances does it take?";
  }

  private static String names(List<String> names, UnaryOperator<String> read) {
    return names.stream().map(read).collect(Collectors.joining(", "));
  }
}
