package hurdline.simulation.activity;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.compiled.CompiledLines;
import hurdline.plant.yaml.PlantFile;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every event that a plant may expect has a number of its own, and the words by which a message
 * about a standing clock names it.
 */
class EventSlotsTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "sweetgum-bend",
        "stalk",
        "exact/mill_orders",
        "exact/two_spouts",
        "exact/stops_in_turn"
      })
  void everySlotIsNamedByWhatItStandsFor(String plant) {
    CompiledLines layout =
        CompiledLines.of(PlantFile.read(Path.of("../line-configs", plant + ".yaml")).plant());
    EventSlots slots = new EventSlots(layout);
    Set<Integer> told = new TreeSet<>();
    for (int h = 0; h < layout.heads; h++) {
      int bin = layout.headBin[h];
      String at =
          bin >= 0
              ? layout.naming.bins.name(bin)
              : layout.machine[layout.stretch[h].machine[0]].name();
      named(layout, slots, slots.lotEnd + h, "the end of a lot at " + at, told);
    }
    for (int b = 0; b < layout.bins; b++) {
      named(layout, slots, slots.level + b, "the level of " + layout.naming.bins.name(b), told);
    }
    for (int m = 0; m < layout.machines; m++) {
      String name = layout.machine[m].name();
      named(layout, slots, slots.full[m], "a full package at " + name, told);
      named(layout, slots, slots.stay[m], "the stay of " + name, told);
      named(layout, slots, slots.swapEnd[m], "slot " + slots.swapEnd[m], told);
    }
    for (int p = 0; p < layout.naming.products.count(); p++) {
      named(layout, slots, slots.order[p], "an order for " + layout.naming.products.name(p), told);
    }
    for (int stop = 0; stop < layout.stops.count(); stop++) {
      named(layout, slots, slots.repairEnd + stop, "the end of a repair", told);
      named(layout, slots, slots.stopDue + stop, "a stop", told);
    }
    for (int spout = 0; spout < EventSlots.spouts(layout); spout++) {
      named(layout, slots, slots.changeEnd + spout, "slot " + (slots.changeEnd + spout), told);
    }
    for (int one : new int[] {slots.liftEnd, slots.haulEnd, slots.calendar, slots.arrival}) {
      named(layout, slots, one, "slot " + one, told);
    }
    assertThat(told).as("all of them").hasSize(slots.count);
  }

  private static void named(
      CompiledLines layout, EventSlots slots, int slot, String words, Set<Integer> told) {
    if (slot >= 0) {
      assertThat(told.add(slot)).as(words + " has a number of its own").isTrue();
      assertThat(slots.name(layout, slot)).isEqualTo(words);
    }
  }
}
