package hurdline.flow.rates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import hurdline.flow.LimitSharingNet;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Cases small enough to be worked out by hand; the reasoning stands beside each number. */
class RateSolverTest {
  private static final Offset<Double> EXACT = within(1e-12);

  private static void assertRates(RateSolver solver, double... expected) {
    assertThat(solver.rateKgPerS()).containsExactly(expected, EXACT);
  }

  @Test
  void withoutContestedLimitsEveryHeadRunsAtItsReach() {
    RateSolver solver = LimitSharingNet.reaching(0, 2, 0, 0.5).solved();
    assertThat(solver.rateKgPerS()).containsExactly(2, 0, 0.5);
    assertThat(solver.pace()).containsExactly(1, 0, 1);
    assertThat(solver.heldBy()).containsExactly(-1, -1, -1);
  }

  @Test
  void twoHeadsOnOneMachineAreCutToTheSamePace() {
    // reaches 4 and 2 on a machine that takes 3 of either: pace 1/2 for both
    RateSolver solver = LimitSharingNet.reaching(1, 4, 2).limit(0, 1, 1 / 3.0, 1 / 3.0).solved();
    assertRates(solver, 2, 1);
    assertThat(solver.heldBy()).containsExactly(0, 0);
    assertThat(solver.pace()).containsExactly(new double[] {0.5, 0.5}, EXACT);
  }

  @Test
  void whatOneHeadCannotUseGoesToTheOther() {
    // machine 0 takes 10 of both; machine 1 lets head 0 have 2: head 1 gets the other 8
    RateSolver solver =
        LimitSharingNet.reaching(2, 9, 9).limit(0, 10, 1, 1).limit(1, 2, 1, 0).solved();
    assertRates(solver, 2, 8);
    assertThat(solver.heldBy()).containsExactly(1, 0);
  }

  @Test
  void whoIsServedFirstTakesAllItCanUse() {
    RateSolver solver =
        LimitSharingNet.reaching(1, 4, 5, 5).precedence(1, 0, 2).limit(0, 6, 1, 1, 1).solved();
    assertRates(solver, 1, 5, 0);
    assertThat(solver.heldBy()).containsExactly(0, -1, 0);
    assertThat(solver.isHolder(0, 0)).isTrue();
    assertThat(solver.isHolder(0, 2)).isTrue();
    assertThat(solver.isHolder(0, 1)).as("a head served later gets 1").isFalse();
  }

  @Test
  void whoIsServedLastGetsNothingWhereAnEarlierHeadIsHeld() {
    RateSolver solver =
        LimitSharingNet.reaching(1, 0.7, 0.3).precedence(3, 9).limit(0, 0.1, 0.7, 0.3).solved();
    assertThat(solver.rateKgPerS()[0]).isCloseTo(0.1 / 0.7, EXACT);
    assertThat(solver.rateKgPerS()[1]).isZero();
    assertThat(solver.heldBy()).containsExactly(0, 0);
  }

  @Test
  void aFullBinHoldsItsProducerToWhatItsConsumerTakes() {
    // four fifths of what head 0 draws reach the bin, head 1 draws 2 from it: 2.5
    RateSolver solver = LimitSharingNet.reaching(1, 6, 2).limit(0, 0, 0.8, -1).solved();
    assertRates(solver, 2.5, 2);
    assertThat(solver.heldBy()).containsExactly(0, -1);
  }

  @Test
  void anEmptyBinHoldsItsConsumerToWhatArrives() {
    RateSolver solver = LimitSharingNet.reaching(1, 2, 6).limit(0, 0, -0.8, 1).solved();
    assertRates(solver, 2, 1.6);
    assertThat(solver.heldBy()).containsExactly(-1, 0);
  }

  @Test
  void aBinBetweenPartsWhatIsAboveFromWhatIsBelow() {
    LimitSharingNet net = LimitSharingNet.reaching(1, 2, 6).limit(0, 0, -0.8, 1);
    net.active[0] = false;
    assertThat(net.solved().rateKgPerS()).containsExactly(2, 6);
  }

  @Test
  void aBinThatNobodyDrawsFromStopsItsProducerWhenFull() {
    RateSolver solver = LimitSharingNet.reaching(1, 6, 0).limit(0, 0, 0.8, -1).solved();
    assertThat(solver.rateKgPerS()).containsExactly(0, 0);
    assertThat(solver.heldBy()).containsExactly(0, -1);
    assertThat(solver.isHolder(0, 0)).isTrue();
    assertThat(solver.isHolder(0, 1)).as("a head without reach has no holder").isFalse();
  }

  @Test
  void aStopAtTheEndPassesThroughAnyNumberOfFullBins() {
    for (double last : new double[] {0, 0.3}) {
      int bins = 10;
      LimitSharingNet net = new LimitSharingNet(bins + 1, bins);
      for (int bin = 0; bin < bins; bin++) {
        net.reach[bin] = 5 - 0.1 * bin;
        net.coefficient[bin * net.heads + bin] = 0.9;
        net.coefficient[bin * net.heads + bin + 1] = -1;
      }
      net.reach[bins] = last;
      RateSolver solver = net.solved();
      for (int head = 0; head <= bins; head++) {
        assertThat(solver.rateKgPerS()[head])
            .isCloseTo(last / Math.pow(0.9, bins - head), within(1e-14));
        assertThat(solver.heldBy()[head]).isEqualTo(head < bins ? head : -1);
      }
    }
  }

  @Test
  void aTrickleAtTheStartPassesThroughAnyNumberOfEmptyBins() {
    int bins = 10;
    LimitSharingNet net = new LimitSharingNet(bins + 1, bins);
    for (int head = 0; head <= bins; head++) {
      net.reach[head] = head == bins ? 0.3 : 5; // numbered against the stream
    }
    for (int bin = 0; bin < bins; bin++) {
      net.coefficient[bin * net.heads + bin] = 1;
      net.coefficient[bin * net.heads + bin + 1] = -0.9;
    }
    RateSolver solver = net.solved();
    for (int head = 0; head <= bins; head++) {
      assertThat(solver.rateKgPerS()[head])
          .isCloseTo(0.3 * Math.pow(0.9, bins - head), within(1e-15));
    }
  }

  @Test
  void aHeadIsNotSpedUpBecauseItsConsumerIsShort() {
    // heads 0 and 1 share a machine of 6; head 0 fills an empty bin whose draw, head 2, could take
    // 40
    RateSolver solver =
        LimitSharingNet.reaching(2, 6, 6, 40).limit(0, 6, 1, 1, 0).limit(1, 0, -1, 0, 1).solved();
    assertRates(solver, 3, 3, 3);
    assertThat(solver.heldBy()).containsExactly(0, 0, 1);
  }

  @Test
  void aFullBinCutsItsProducersToOnePace() {
    RateSolver solver = LimitSharingNet.reaching(1, 4, 8, 3).limit(0, 0, 1, 1, -1).solved();
    assertRates(solver, 1, 2, 3);
  }

  @Test
  void aFullBinServesTheProducerWithPrecedenceFirst() {
    RateSolver solver =
        LimitSharingNet.reaching(1, 4, 8, 3).precedence(1, 0, 0).limit(0, 0, 1, 1, -1).solved();
    assertRates(solver, 0, 3, 3);
  }

  @Test
  void twoDrawsShareWhatArrivesInAnEmptyBin() {
    RateSolver solver = LimitSharingNet.reaching(1, 3, 2, 4).limit(0, 0, -1, 1, 1).solved();
    assertRates(solver, 3, 1, 2);
  }

  @Test
  void aDrawThatReturnsPartToItsOwnEmptyBinCountsWithItsNetDraw() {
    // a quarter comes back: 3 arriving feed a draw of 4
    assertRates(LimitSharingNet.reaching(1, 3, 9).limit(0, 0, -1, 0.75).solved(), 3, 4);
  }

  @Test
  void aDrawThatReturnsPartToItsOwnFullBinMakesRoomOnlyForItsNetDraw() {
    assertRates(LimitSharingNet.reaching(1, 9, 4).limit(0, 0, 1, -0.75).solved(), 3, 4);
  }

  @Test
  void oneCycloneBeforeAndAfterAFullBinIsSharedSoThatTheBinStaysLevel() {
    // cyclone of 6 takes all of both; the bin is full, so both carry 3. A plain sweep would go 6,
    // 0, 6 …
    RateSolver solver =
        LimitSharingNet.reaching(2, 6, 6).limit(0, 6, 1, 1).limit(1, 0, 1, -1).solved();
    assertRates(solver, 3, 3);
    assertThat(solver.isHolder(1, 0)).isTrue();
    assertThat(solver.isHolder(0, 1)).isTrue();
  }

  @Test
  void oneCycloneBeforeAndAfterAFullBinGivesTheConsumerWhatTheProducerLeaves() {
    // the producer loads it double: 2·p + d = 6 and p = d. At equal paces the bin would rise, 2.12
    // against 1.76
    RateSolver solver =
        LimitSharingNet.reaching(2, 3, 2.5).limit(0, 6, 2, 1).limit(1, 0, 1, -1).solved();
    assertRates(solver, 2, 2);
    assertThat(solver.heldBy()).containsExactly(1, 0);
  }

  @Test
  void oneCycloneBeforeAndAfterAFullBinCutsBothToOnePaceWhereTheBinThenFalls() {
    // 2·3·t + 10·t = 6
    assertRates(
        LimitSharingNet.reaching(2, 3, 10).limit(0, 6, 2, 1).limit(1, 0, 1, -1).solved(),
        1.125,
        3.75);
  }

  @Test
  void oneCycloneBeforeAndAfterAnEmptyBinGivesTheProducerWhatTheConsumerLeaves() {
    // half of what the producer draws reaches the bin: p + p/2 = 6
    RateSolver solver =
        LimitSharingNet.reaching(2, 6, 6).limit(0, 6, 1, 1).limit(1, 0, -0.5, 1).solved();
    assertRates(solver, 4, 2);
    assertThat(solver.heldBy()).containsExactly(0, 1);
  }

  @Test
  void aMachineThatLetsNothingThroughStopsItsHeadsAndNoOther() {
    RateSolver solver =
        LimitSharingNet.reaching(2, 4, 4, 4).limit(0, 0, 1, 1, 0).limit(1, 5, 0, 1, 1).solved();
    assertThat(solver.rateKgPerS()).containsExactly(0, 0, 4);
    assertThat(solver.heldBy()).containsExactly(0, 0, -1);
  }

  @Test
  void aHeadWithoutReachTakesNoPartInAnything() {
    RateSolver solver = LimitSharingNet.reaching(1, 4, 0, 6).limit(0, 5, 1, 1, 1).solved();
    assertRates(solver, 2, 0, 3);
    assertThat(solver.heldBy()).containsExactly(0, -1, 0);
  }

  @Test
  void equalSpeedsInOtherUnitsLeaveTheBinLevel() {
    // 3.6 t/h against 60 kg/min: the same rate, or nearly so, in binary; nobody is cut by a last
    // bit
    double tonnesAnHour = 3.6 * 1000 / 3600;
    double kgAMinute = 60 * (1 / 60.0);
    RateSolver solver =
        LimitSharingNet.reaching(1, tonnesAnHour, kgAMinute * (1 - 2e-16))
            .limit(0, 0, 1, -1)
            .solved();
    assertThat(solver.pace()).containsExactly(1, 1);
    assertThat(solver.isHolder(0, 0)).as("the bin holds it as well as its reach does").isTrue();
  }

  @Test
  void aHeadHeldByTwoLimitsAtOnceKnowsBoth() {
    RateSolver solver =
        LimitSharingNet.reaching(3, 8).limit(0, 4, 1).limit(1, 2, 0.5).limit(2, 5, 1).solved();
    assertRates(solver, 4);
    assertThat(solver.isHolder(0, 0)).isTrue();
    assertThat(solver.isHolder(1, 0)).isTrue();
    assertThat(solver.isHolder(2, 0)).as("not used up").isFalse();
  }

  @Test
  void whatReturnsLeaveOfNothingIsNothing() {
    RateSolver solver = LimitSharingNet.reaching(1, 4, 4).limit(0, 0, 1e-13, 0).solved();
    assertThat(solver.rateKgPerS()).containsExactly(4, 4);
    assertThat(solver.isHolder(0, 0)).isFalse();
  }

  @Test
  void anEarlierAnswerLeavesNoTrace() {
    LimitSharingNet cut = LimitSharingNet.reaching(2, 6, 6).limit(0, 6, 1, 1).limit(1, 0, 1, -1);
    LimitSharingNet free = LimitSharingNet.reaching(2, 2, 3).limit(0, 6, 1, 1).limit(1, 0, 1, -1);
    RateSolver solver = cut.newSolver();
    solver.solve();
    double[] first = solver.rateKgPerS().clone();
    free.writeTo(solver);
    solver.solve();
    assertThat(solver.rateKgPerS()).containsExactly(2, 3);
    assertThat(solver.heldBy()).containsExactly(-1, -1);
    cut.writeTo(solver);
    solver.solve();
    assertThat(solver.rateKgPerS()).containsExactly(first);
  }

  @Test
  void numbersThatAreNoneAreRefused() {
    for (double bad : new double[] {Double.NaN, -1, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> LimitSharingNet.reaching(0, 1, bad).solved())
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessage("reach of head 1 is " + bad + ", expected at least 0 and finite");
    }
    assertThatThrownBy(() -> LimitSharingNet.reaching(1, 1).limit(0, Double.NaN, 1).solved())
        .hasMessage("room of limit 0 is NaN, expected at least 0");
    assertThatThrownBy(() -> LimitSharingNet.reaching(1, 1).limit(0, 1, Double.NaN).solved())
        .hasMessage("coefficient of head 0 at limit 0 is NaN");
  }

  @Test
  void aHeadServedFirstThatNearlyFillsAMachineAloneStillLeavesTheRestToWhoFeedsIt() {
    // head 0 fills the machine but for what its full bin refuses; head 1 draws from that bin
    // through the same machine:
    // p + d/30 = 1 and p/30 = 2·d. A sweep answers a step of d with one 1,800 times as large
    RateSolver solver =
        LimitSharingNet.reaching(2, 1, 1)
            .precedence(0, 1)
            .limit(0, 1, 1, 1 / 30.0)
            .limit(1, 0, 1 / 30.0, -2)
            .solved();
    double draw = 1 / (60 + 1 / 30.0);
    assertRates(solver, 60 * draw, draw);
    assertThat(solver.heldBy()).containsExactly(1, 0);
    assertThat(solver.knotRounds()).as("heads that hang on themselves").isPositive();
    assertThat(LimitSharingNet.reaching(1, 4, 2).limit(0, 3, 1, 1).solved().knotRounds())
        .as("none is sensitive to itself")
        .isZero();
  }

  @Test
  void aCircleThroughTwoBinsThatFindsNoRatesIsNamed() {
    // no plant file may hold such a circle; found among 300,000 random ones
    LimitSharingNet net =
        LimitSharingNet.reaching(4, 2, 0.5, 0.25, 1, 0.5, 0.25, 0.5, 1, 0.5, 0.5)
            .limit(0, 0, 0.75, 0.75, 0.25, 0, 0, 0.125, -0.75, 0, 0, -1)
            .limit(1, 0, 0, 0, 0, 1, -0.25, 1, 0, 1, 0, 0)
            .limit(2, 0, 1, 0, -0.5, -0.5, -0.5, -0.75, -0.5, 0, 1, -0.5)
            .limit(3, 1, 0, 2, 0, 0, 1 / 3.0, 0, 0, 1, 0, 0);
    NoConsistentRatesException knot =
        catchThrowableOfType(NoConsistentRatesException.class, net::solved);
    assertThat(knot.limits()).containsExactly(0, 1, 2, 3);
    assertThat(knot.heads())
        .as("all that use a limit; 6 and 9 only give")
        .containsExactly(0, 1, 2, 3, 4, 5, 7, 8);
    assertThat(knot)
        .hasMessageMatching(
            "no rates agree after \\d+ rounds: limits \\[.*] and heads \\[.*] hold each other");
  }
}
