package hurdline.text.notes;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.CompareFact;
import hurdline.answer.Fact;
import hurdline.answer.RunFact;
import hurdline.answer.SafetyFact;
import hurdline.sample.SampleAnswer;
import hurdline.sample.SampleFacts;
import hurdline.text.UnitSystem;
import hurdline.text.Wording;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class NotesTest {
  private static final Wording GERMAN_US = new Wording(UnitSystem.US, Locale.GERMANY);
  private static final Wording METRIC = new Wording(UnitSystem.METRIC, Locale.US);

  private static String text(Fact fact, Wording wording) {
    return notes(wording).of(List.of(fact)).get(0).text();
  }

  private static Notes notes(Wording wording) {
    return new Notes(SampleAnswer.year().header(), wording);
  }

  @Test
  void thereIsASentenceAndASampleForEachKindOfFact() {
    assertThat(Fact.kinds()).hasSizeGreaterThan(35).allMatch(notes(METRIC)::know);
    assertThat(SampleFacts.all()).extracting(Fact::getClass).containsAll(Fact.kinds());
    assertThat(Fact.kinds()).extracting(Fact::word).doesNotHaveDuplicates();
  }

  @Test
  void amountsAreInTheReadersUnitsAndMarks() {
    Fact place = new SafetyFact.StoredInPlace("open", 5_200, "bales", 1_429_000, 160, 7.62);
    assertThat(text(place, METRIC))
        .contains("open holds 5,200 bales, some 1,430 t.", "stacks of 160 with lanes of 7.62 m,");
    assertThat(text(place, GERMAN_US))
        .contains(
            "open holds 5.200 bales, some 1.580 ton.", "stacks of 160 with lanes of 25,0 ft,");
    Fact bin = new SafetyFact.StoredInBin("hurd_bin", 62.5, Double.NaN);
    assertThat(text(bin, METRIC)).contains("It holds 62.5 m3.");
    assertThat(text(bin, GERMAN_US)).contains("It holds 2.210 ft3.");
    Fact prices = new CompareFact.MoneyOverLife(0.0825, true, 0.025, 0.02, 0.035, 0.0125, 2.5);
    assertThat(text(prices, METRIC)).contains("Discounted at 8.25 % a year.", "within 2.5 years");
    assertThat(text(prices, GERMAN_US))
        .contains("Discounted at 8,25 % a year.", "within 2,5 years");
  }

  /** Two digits rounded up, which is what such an estimate deserves. */
  @Test
  void anAimOutOfReachSaysHowManyReplicationsItTakes() {
    assertThat(
            Notes.early(
                new RunFact.AimOutOfReach("money.margin:aim", 40, 4_196_000, 10_000), METRIC))
        .isEqualTo(
            "--until money.margin:aim will not be reached: by the spread of the first 40 replications it takes about"
                + " 4,200,000; 10,000 are simulated at most. Ctrl-C ends sooner and keeps what is done.");
    assertThat(
            Notes.early(
                new RunFact.AimOutOfReach("a:1", 40, Double.POSITIVE_INFINITY, 10_000), GERMAN_US))
        .contains("it takes more than 1.000.000.000; 10.000 are simulated");
  }

  @Test
  void anAimSaysHowFarItIsAndInWhichUnit() {
    Fact reached =
        new RunFact.Aim(
            "mass.stalk.fed:2%",
            RunFact.Aim.Outcome.REACHED, 90.7185, 181.437, "t", 30, 10_000, false);
    assertThat(text(reached, METRIC))
        .contains("is reached: the half-width is 90.7 t of 181 t allowed.");
    assertThat(text(reached, GERMAN_US))
        .contains("is reached: the half-width is 100 ton of 200 ton allowed.");
  }

  @Test
  void theLimitOfSafeMoistureIsLeftToTheWarning() {
    assertThat(text(new SafetyFact.WetBales(List.of("stalk")), METRIC))
        .contains("stalk", "warning", "fire code")
        .doesNotContain("%");
  }
}
