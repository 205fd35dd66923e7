package hurdline.study;

import hurdline.answer.Note;
import hurdline.chance.Distribution;
import hurdline.plant.Bale;
import hurdline.plant.Calendar;
import hurdline.plant.Crop;
import hurdline.plant.Delivery;
import hurdline.plant.Machine;
import hurdline.plant.Plant;
import hurdline.plant.Stop;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What in this very plant can hurt someone, by name. */
final class PlantCautions {
  /**
   * Wettest safe moisture of large bales: 16 to 18 % by extension advice for hay in the South of the
   * USA, 14 % in California, below 15 % by Ontario and Alberta advice for fiber crops.
   */
  private static final double USUAL_MOST = 0.18;

  private static final double WETTEST_SHARE = 0.95;

  /** Common practice, no source: locking out and trying the start takes some minutes by itself. */
  private static final double SHORT_STOP_S = 10 * 60;

  private static final int LONG_SHIFT_S = 10 * 3600;

  private final Plant plant;

  PlantCautions(Plant plant) {
    this.plant = plant;
  }

  List<Note> notes() {
    List<Note> notes = new ArrayList<>();
    wetBales().ifPresent(notes::add);
    shortStops().ifPresent(notes::add);
    stops().ifPresent(notes::add);
    dust().ifPresent(notes::add);
    hours().ifPresent(notes::add);
    return notes;
  }

  private Optional<Note> wetBales() {
    String where =
        plant.crops().stream()
            .filter(crop -> !crop.modules())
            .flatMap(this::wet)
            .collect(Collectors.joining(", "));
    return note(
        where,
        "Wet bales",
        "One bale in twenty or more is wetter than 18 % in: "
            + where
            + ". Extension advice for large bales of hay is 16 to 18 % at most (14 % in California),"
            + " and for fiber crops below 15 % (Ontario and Alberta). Wetter bales heat, rot and can"
            + " set themselves on fire days or weeks later: measure before stacking, keep wet ones"
            + " apart, watch their temperature. The local fire code and the insurer decide.");
  }

  private Stream<String> wet(Crop crop) {
    Stream<String> ofFields =
        plant.deliveries().stream()
            .filter(delivery -> delivery.crop().equals(crop.name()))
            .flatMap(delivery -> delivery.fields().stream())
            .filter(field -> isWet(field.bale()))
            .map(Delivery.Field::name);
    Stream<String> ofCrop = isWet(crop.bale()) ? Stream.of(crop.name()) : Stream.of();
    return Stream.concat(ofCrop, ofFields);
  }

  private static boolean isWet(Bale bale) {
    Distribution moisture = bale.moisture();
    return moisture.at(WETTEST_SHARE) > USUAL_MOST;
  }

  private Optional<Note> shortStops() {
    List<String> found = new ArrayList<>();
    for (Machine machine : plant.machines()) {
      for (Stop stop : machine.common().stops()) {
        if (stop.lastsS().mean() < SHORT_STOP_S) {
          found.add(machine.name() + "." + stop.name());
        }
      }
    }
    String which = String.join(", ", found);
    return note(
        which,
        "Short stops",
        "These stops are planned to last less than ten minutes on average: "
            + which
            + ". Bringing a machine to rest, locking it out, clearing it and trying the start take"
            + " their time; if less than that was measured, look at how the work is done before the"
            + " figure is used.");
  }

  private Optional<Note> stops() {
    String which =
        plant.machines().stream()
            .filter(machine -> !machine.common().stops().isEmpty())
            .map(
                machine ->
                    machine.name()
                        + " ("
                        + machine.common().stops().stream()
                            .map(Stop::name)
                            .collect(Collectors.joining(", "))
                        + ")")
            .collect(Collectors.joining(", "));
    return note(
        which,
        "Locked-out work",
        "Clearing, changing and cleaning at "
            + which
            + " is planned as time in which the machine is at rest and locked out, guards back on"
            + " before it starts. A choke is never cleared on a machine that can start.");
  }

  private Optional<Note> dust() {
    String which =
        plant.machines().stream()
            .filter(m -> m instanceof Machine.HammerMill || m instanceof Machine.Cyclone)
            .map(Machine::name)
            .collect(Collectors.joining(", "));
    return note(
        which,
        "Sparks and dust",
        "Milling makes sparks where a stone or a bolt comes through, and fine dust gathers: "
            + which
            + ". Magnets, spark detection, explosion relief and housekeeping follow the local fire"
            + " code, the insurer and a licensed engineer's design; this plan sizes none of them.");
  }

  private Optional<Note> hours() {
    String which =
        plant.calendar().shifts().stream()
            .filter(shift -> shift.lengthS() > LONG_SHIFT_S || shift.toS() <= shift.fromS())
            .map(Calendar.Shift::name)
            .collect(Collectors.joining(", "));
    return note(
        which,
        "Long and night shifts",
        "More than ten hours or past midnight: "
            + which
            + ". Whether such shifts, their rests and their pay are allowed is for local labor law"
            + " and agreements; tired people get hurt at machines more often.");
  }

  private static Optional<Note> note(String which, String title, String text) {
    return which.isEmpty() ? Optional.empty() : Optional.of(new Note(title, text));
  }
}
