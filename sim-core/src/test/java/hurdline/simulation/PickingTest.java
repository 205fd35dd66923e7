package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PickingTest {
  private static final int STALK = 1;

  /** Three bales on hand fill the shed; loads of two come to the open at 9:00 and 10:00. */
  private static YardRun yard(String pick) {
    return YardRun.of(
        YardTexts.march(
            1,
            """
            yard:
              on_hand: {stalk: 3 bales}
              places: {shed: {holds: 3 bales}, row: {holds: 9 bales, crops: [cotton]}, open: {holds: 4 bales}}
              pick: %s
            deliveries:
              stalk:
                loads: {every: 1 h, bales: 2, hours: {from: "08:00", to: "10:30"}}
            """
                .formatted(pick)));
  }

  @Test
  void theOldestIsPickedFirst() {
    assertThat(arrivalsInPickOrder(yard("oldest-first")))
        .containsExactly(0.0, 0.0, 0.0, 9.0, 9.0, 10.0, 10.0);
  }

  @Test
  void theNewestIsPickedFirst() {
    assertThat(arrivalsInPickOrder(yard("newest-first")))
        .containsExactly(10.0, 10.0, 9.0, 9.0, 0.0, 0.0, 0.0);
  }

  @Test
  void theFirstPlaceNamedThatHasOneIsPickedFromOldestFirst() {
    YardRun run = yard("{places: [open, shed]}");
    assertThat(arrivalsInPickOrder(run)).containsExactly(9.0, 9.0, 10.0, 10.0, 0.0, 0.0, 0.0);
  }

  @Test
  void theDriestIsPickedFirst() {
    YardRun run = yard("driest-first");
    List<Double> moistures = new ArrayList<>();
    run.at(
            11 * YardRun.H,
            nowS -> {
              for (int k = 0; k < 7; k++) {
                moistures.add(run.bales.told(run.lift(STALK, nowS), 0, nowS).moisture());
              }
            })
        .run();
    assertThat(moistures).hasSize(7).isSorted().doesNotHaveDuplicates();
  }

  @Test
  void equalBalesGoByPlaceThenInTheOrderInWhichTheyCame() {
    YardRun run =
        YardRun.of(
            YardTexts.march(
                1,
                """
                yard: {on_hand: {stalk: 5 bales}, places: {shed: {holds: 2 bales}, open: {holds: 4 bales}}, pick: newest-first}
                """));
    List<Integer> places = new ArrayList<>();
    List<Integer> turns = new ArrayList<>();
    run.at(
            1,
            nowS -> {
              for (int k = 0; k < 5; k++) {
                int bale = run.stacking.pick(STALK);
                places.add(run.bales.place(bale));
                turns.add(run.bales.turn(bale));
                run.stacking.leave(bale, nowS);
              }
            })
        .run();
    assertThat(places).containsExactly(0, 0, 1, 1, 1);
    assertThat(turns).containsExactly(0, 1, 2, 3, 4);
  }

  @Test
  void aPickedBaleCountsInItsPlaceUntilTheLiftEnds() {
    YardRun run = yard("oldest-first");
    run.at(
            11 * YardRun.H,
            nowS -> {
              run.stacking.promise(STALK, 2);
              assertThat(run.stacking.unpromised(STALK)).isEqualTo(5);
              int bale = run.stacking.pick(STALK);
              assertThat(run.stacking.unpromised(STALK)).isEqualTo(5);
              assertThat(run.stacking.inYard(STALK)).isEqualTo(7);
              run.stacking.leave(bale, nowS);
              assertThat(run.stacking.inYard(STALK)).isEqualTo(6);
              run.stacking.promise(STALK, -1);
              assertThat(run.stacking.unpromised(STALK)).isEqualTo(6);
            })
        .run();
    assertThat(run.books.levels.inYard(STALK)).isEqualTo(6);
  }

  @Test
  void whatComesBackFromTheTableIsPickedBeforeAllOthers() {
    YardRun run = yard("newest-first");
    run.at(
            11 * YardRun.H,
            nowS -> {
              int begun = run.lift(STALK, nowS);
              int waiting = run.lift(STALK, nowS);
              run.stacking.putBackInFront(waiting, run.bales.massKg(waiting), nowS);
              run.stacking.putBackInFront(begun, 120, nowS);
              assertThat(run.stacking.inYard(STALK)).isEqualTo(7);
              assertThat(run.lift(STALK, nowS)).isEqualTo(begun);
              assertThat(run.lift(STALK, nowS)).isEqualTo(waiting);
            })
        .run();
    assertThat(run.books.putBack.kg(STALK)).isCloseTo(620, within(1e-9));
    assertThat(run.books.setOnTable.kg(STALK)).isCloseTo(1000 + 620, within(1e-9));
  }

  @Test
  void whatComesBackToAFullYardLiesInExcess() {
    YardRun run =
        YardRun.of(
            YardTexts.march(
                1, "yard: {on_hand: {stalk: 2 bales}, places: {shed: {holds: 2 bales}}}\n"));
    run.at(
            1,
            nowS -> {
              int bale = run.lift(STALK, nowS);
              run.stacking.promiseRoom(STALK, 1);
              run.stacking.putBackInFront(bale, 500, nowS);
              assertThat(run.stacking.hasRoom(STALK, 1)).isFalse();
            })
        .run();
    assertThat(run.stacking.inYard(STALK)).isEqualTo(2);
  }

  @Test
  void anEmptyYardHasNothingToPick() {
    YardRun run =
        YardRun.of(YardTexts.march(1, "yard: {places: {shed: {holds: 2 bales}}}\n")).run();
    assertThatThrownBy(() -> run.stacking.pick(STALK))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("stalk");
  }

  /**
   * Hours of the day at which the bales were weighed in, in the order in which they are picked at
   * 11:00.
   */
  private static List<Double> arrivalsInPickOrder(YardRun run) {
    List<Double> arrivals = new ArrayList<>();
    run.at(
            11 * YardRun.H,
            nowS -> {
              while (run.stacking.unpromised(STALK) > 0) {
                arrivals.add((0 - run.bales.told(run.lift(STALK, nowS), 0, 0).ageS()) / YardRun.H);
              }
            })
        .run();
    return arrivals;
  }
}
