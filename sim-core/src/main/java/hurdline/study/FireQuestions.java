package hurdline.study;

import hurdline.answer.Note;
import hurdline.plant.Machine;
import hurdline.plant.Yard;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What to ask the fire official before anything is built: how much may lie in one block is for the local code to say, and
 * model codes let less stand together than a large shed or bin holds.
 */
final class FireQuestions {
  private final CropYard yard;

  FireQuestions(CropYard yard) {
    this.yard = yard;
  }

  List<Note> notes() {
    List<Note> notes = new ArrayList<>();
    yard.places().forEach(place -> notes.add(place(place)));
    for (Machine machine : yard.plant().machines()) {
      if (machine instanceof Machine.Bin bin) {
        notes.add(bin(bin));
      }
    }
    return notes;
  }

  private Note place(Yard.Place place) {
    double tonnes = place.holds() * yard.crop().bale().massKg().mean() / 1000;
    String whole =
        "As the file has it "
            + place.name()
            + " holds "
            + place.holds()
            + " "
            + yard.unit()
            + ", some "
            + rough(tonnes)
            + " t. ";
    String asked =
        Ground.of(place, yard)
            .map(
                ground ->
                    "They stand in stacks of "
                        + ground.plan(place.holds()).balesOfStack()
                        + " with lanes of "
                        + rough(place.stack().orElseThrow().laneM())
                        + " m, as the file says. Is a stack of that size allowed, is the lane wide enough,"
                        + " and how far must stacks be from buildings, roads, lines and the property line?")
            .orElse(
                "The file does not say how they are parted. May so much lie in one block or under one roof,"
                    + " and if not, how large may a block be, how wide the lanes, and what fire walls,"
                    + " sprinklers and water does it take?");
    return new Note("The place " + place.name(), whole + asked);
  }

  private static Note bin(Machine.Bin bin) {
    String holds = bin.byVolume() ? rough(bin.holds()) + " m3" : rough(bin.holds() / 1000) + " t";
    return new Note(
        "The bin " + bin.name(),
        "It holds "
            + holds
            + ". May so much loose material stand in one bin, indoors or beside the building, and which"
            + " explosion relief, spark detection and distances does it take?");
  }

  private static String rough(double value) {
    return value >= 100 ? String.format(Locale.ROOT, "%,.0f", value) : String.format(Locale.ROOT, "%.3g", value).replaceAll("\\.?0+$", "");
  }
}
