package hurdline.study.gain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.CompareAnswer;
import hurdline.answer.DifferenceRow;
import hurdline.answer.FollowUpFact;
import hurdline.answer.FollowUpFact.NotIncreased;
import hurdline.answer.FollowUpFact.NotIncreased.Why;
import hurdline.answer.GainRow;
import hurdline.answer.Increase;
import hurdline.answer.Increase.Kind;
import hurdline.simulation.CompiledPlant;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.Studied;
import hurdline.study.compare.Compare;
import hurdline.study.compare.CompareAsk;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class CapacityGainsTest {
  private static final PlantOrigin SLOW_MILL =
      Studied.source(Path.of("../line-configs/exact/slow_mill.yaml"));
  private static final PlantOrigin SMALL = Studied.fourWeeks();
  private static final String FED = "mass.stalk.fed";

  private static CompareAnswer asked(
      PlantOrigin file, int replications, int threads, String... among) {
    CompareAsk ask =
        new CompareAsk(
            List.of(among),
            OptionalDouble.empty(),
            OptionalInt.of(2),
            true,
            Optional.empty(),
            List.of(),
            Optional.empty());
    return new Compare(file, PlantChanges.base(), ask, Studied.effort(replications, threads))
        .simulate((done, of) -> {}, () -> false)
        .orElseThrow();
  }

  private static GainRow gain(CompareAnswer answer, String what, String measure) {
    return answer.further().gains().stream()
        .filter(row -> row.what().equals(what) && row.measure().equals(measure))
        .findFirst()
        .orElseThrow();
  }

  /**
   * No chance in it, so each gain is done by hand, after slow_mill.md: hurd is 60 % of the feed and
   * fills 5 t of bin at 3 t/h, then the mill's 1.2 t/h hold the feed at 2 t/h to the end of 39.95
   * h.
   */
  @Test
  void aTenthMoreOfEachThingBringsWhatIsDoneByHand() {
    CompareAnswer answer = asked(SLOW_MILL, 3, 2);
    double before = 25 + 2 * (39.95 - 25 / 3.0);
    double fullAt = 5 / (1.8 - 1.32);
    assertThat(gain(answer, "mill", FED).gain())
        .isCloseTo(3 * fullAt + 2.2 * (39.95 - fullAt) - before, within(1e-6));
    assertThat(gain(answer, "hurd_bin", FED).gain()).isCloseTo(0.5 / 0.6, within(1e-6));
    assertThat(gain(answer, "shift.day", FED).gain())
        .as("48 min on 5 days")
        .isCloseTo(8, within(1e-6));
    assertThat(gain(answer, "shift.day", FED).more())
        .isEqualTo(new Increase(Kind.LONGER_TO, 48 * 60, 14 * 3_600 + 48 * 60));
    for (String what : List.of("feeder", "saw", "bagger", "resource.loader")) {
      assertThat(gain(answer, what, FED).gain()).as(what).isZero();
      assertThat(gain(answer, what, FED).significant()).as(what).isFalse();
    }
    assertThat(answer.further().gains()).as("7 things, fed and margin").hasSize(14);
    assertThat(gain(answer, "mill", FED).significant()).isTrue();
    assertThat(gain(answer, "mill", FED).unit()).isEqualTo("t");
    assertThat(gain(answer, "resource.loader", FED).more())
        .isEqualTo(new Increase(Kind.COUNT, 1, 1));
  }

  /** The same change as an option: the pairs must be the same ones, and so must the mean. */
  @Test
  void aGainIsTheDifferenceThatAnOptionWouldMake() {
    CompareAnswer answer = asked(SMALL, 6, 2, "second_spout");
    PlantChanges tenth = Studied.set("machines.mill.power", "16.5 hp");
    double with = Studied.run(SMALL, tenth, Studied.effort(6, 1)).mean(FED);
    DifferenceRow any = answer.difference("second_spout", FED).orElseThrow();
    assertThat(gain(answer, "mill", FED).gain())
        .isCloseTo(with - any.baseMean(), within(1e-9 * with));
    assertThat(gain(answer, "mill", FED).low95()).isLessThan(gain(answer, "mill", FED).gain());
    assertThat(answer.assumptions()).contains(new FollowUpFact.TenthMore(List.of()));
  }

  @Test
  void gainsDoNotHangOnThreads() {
    assertThat(asked(SMALL, 5, 3, "second_spout").further())
        .isEqualTo(asked(SMALL, 5, 1, "second_spout").further());
  }

  /** day ends where swing begins, and the two shifts of the gin go round the clock. */
  @Test
  void aShiftThatCannotBeLongerAtItsEndBeginsEarlierOrIsLeftOut() {
    PlantOrigin example = Studied.source(Studied.EXAMPLE);
    CapacityIncreases mores =
        new CapacityIncreases(
            example, PlantChanges.base(), CompiledPlant.of(example.variants().with()));
    assertThat(mores.all())
        .extracting(more -> more.what() + " " + more.increase())
        .contains(
            "shift.day " + new Increase(Kind.LONGER_FROM, 48 * 60, 5 * 3_600 + 12 * 60),
            "shift.swing " + new Increase(Kind.LONGER_TO, 48 * 60, 22 * 3_600 + 48 * 60),
            "mill " + Increase.tenth(Kind.POWER),
            "feeder " + Increase.tenth(Kind.RATE),
            "hurd_bin " + Increase.tenth(Kind.ROOM),
            "resource.bag_hand " + new Increase(Kind.COUNT, 1, 1))
        .hasSize(21);
    assertThat(mores.left())
        .containsExactly(
            new NotIncreased(Why.SHIFT_WITHOUT_ROOM, "gin_day"),
            new NotIncreased(Why.SHIFT_WITHOUT_ROOM, "gin_night"));
  }

  /** A file without options can still be asked what to improve. */
  @Test
  void gainsNeedNoOptions() {
    CompareAnswer answer = asked(SLOW_MILL, 1, 1);
    assertThat(answer.options()).isEmpty();
    assertThat(gain(answer, "mill", FED).low95()).as("one pair has no interval").isNaN();
  }

  @Test
  void stoppedInBetweenItHasWhatIsWhole() {
    int[] simulations = {
      0
    }; // 2 plants 3 times, 2 lives of 10 calendars of each, then 3 for each thing
    CompareAsk ask =
        new CompareAsk(
            List.of("second_spout"),
            OptionalDouble.empty(),
            OptionalInt.of(2),
            true,
            Optional.empty(),
            List.of(),
            Optional.empty());
    CompareAnswer answer =
        new Compare(SMALL, PlantChanges.base(), ask, Studied.effort(3, 1))
            .simulate((done, of) -> simulations[0] = done, () -> simulations[0] >= 51)
            .orElseThrow();
    assertThat(answer.header().stopped()).isTrue();
    assertThat(answer.header().replications()).isEqualTo(3);
    assertThat(answer.further().gains()).extracting(GainRow::what).containsOnly("feeder");
  }
}
