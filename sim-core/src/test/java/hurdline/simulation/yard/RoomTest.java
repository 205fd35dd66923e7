package hurdline.simulation.yard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hurdline.compiled.YardPlan;
import hurdline.plant.yaml.PlantFile;
import hurdline.simulation.YardTexts;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class RoomTest {
  private static YardPlan plan(String places) {
    return YardPlan.of(
        PlantFile.of("test", YardTexts.march(1, "yard: {places: " + places + "}\n")).plant());
  }

  @Test
  void placesAreFilledInTheirOrderAlsoByThoseThatWerePromisedALaterOne() {
    Room room = new Room(plan("{shed: {holds: 2 bales}, open: {holds: 2 bales}}"));
    room.promise(1, 4);
    int shed = room.takePromised(1);
    room.takePromised(1);
    assertThat(room.takePromised(1)).isEqualTo(1);
    room.giveBack(shed);
    assertThat(room.takePromised(1))
        .as("room in the shed came free before the last arrived")
        .isEqualTo(shed);
    assertThat(room.unpromised(1)).isEqualTo(1);
  }

  @Test
  void moreThanThereIsCannotBePromised() {
    Room room = new Room(plan("{shed: {holds: 2 bales, crops: [cotton]}, open: {holds: 2 bales}}"));
    assertThat(room.unpromised(1)).isEqualTo(2);
    assertThat(room.unpromised(0)).isEqualTo(4);
    assertThatThrownBy(() -> room.promise(1, 3)).isInstanceOf(IllegalStateException.class);
  }

  /**
   * A bale that comes back: where there is room, else where all is promised but not taken, else in
   * excess of what the first place holds.
   */
  @Test
  void whatComesBackUnpromisedAlwaysFindsAPlace() {
    YardPlan plan =
        plan(
            "{cotton: {holds: 9 bales, crops: [cotton]}, shed: {holds: 1 bale}, open: {holds: 2 bales}}");
    int shed = 1;
    int open = 2;
    Room room = new Room(plan);
    assertThat(room.takeAny(1)).isEqualTo(shed);
    assertThat(room.takeAny(1)).isEqualTo(open);
    room.promise(1, 1);
    assertThat(room.unpromised(1)).isZero();
    assertThat(room.takeAny(1)).as("promised, not taken").isEqualTo(open);
    assertThat(room.takeAny(1)).as("all full").isEqualTo(shed);
    assertThat(room.takeAny(1)).isEqualTo(shed);
    assertThat(room.unpromised(0)).as("what the cotton's own place still takes").isEqualTo(9);
    room.reset();
    assertThat(room.unpromised(1)).isEqualTo(3);
    room.promise(1, 3);
    assertThat(room.takeAny(1)).as("both promised: the first in order").isEqualTo(shed);
    room.reset();
    room.take(open);
    room.take(open);
    room.take(open);
    assertThat(room.unpromised(1)).as("in excess is no room elsewhere").isEqualTo(1);
    assertThat(room.takeAny(1)).isEqualTo(shed);
  }

  /** Promises are always kept, and no place ever holds more than it may. */
  @Test
  void aPromiseIsKeptWhateverHappensMeanwhile() {
    YardPlan plan =
        plan(
            "{a: {holds: 7 bales, crops: [stalk]}, b: {holds: 5 bales}, c: {holds: 6 bales, crops: [cotton]}, d: {holds: 3 bales}}");
    SplittableRandom chance = new SplittableRandom(45);
    Room room = new Room(plan);
    int[][] lying = new int[plan.places()][2];
    int[] owed = new int[2];
    int kept = 0;
    for (int step = 0; step < 50_000; step++) {
      int crop = chance.nextInt(2);
      int place = chance.nextInt(plan.places());
      if (chance.nextInt(3) == 0 && room.unpromised(crop) > 0) {
        int bales = 1 + chance.nextInt(room.unpromised(crop));
        room.promise(crop, bales);
        owed[crop] += bales;
      } else if (chance.nextBoolean() && owed[crop] > 0) {
        int to = room.takePromised(crop);
        assertThat(plan.takes(to, crop)).isTrue();
        lying[to][crop]++;
        owed[crop]--;
        kept++;
        assertThat(lying[to][0] + lying[to][1]).isLessThanOrEqualTo(plan.holds(to));
      } else if (lying[place][crop] > 0) {
        lying[place][crop]--;
        room.giveBack(place);
      }
    }
    assertThat(kept).isGreaterThan(1000);
  }
}
