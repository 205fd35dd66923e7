package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Keys, words and names at a cursor, which stands where the text has a bar. */
class KeyOffersTest {
  private static final String EXAMPLE = PlantFiles.text("sweetgum-bend.yaml");

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '`',
      value = {
        "|; hurdline,plant,calendar,crops,machines,lines,season,yard,options",
        "hurdline: 1\\npl|; plant,plans",
        "calendar:\\n  |; from,to,shifts,closed",
        "calendar:\\n  from: 2027-01-01\\n  |; to,shifts,closed",
        "calendar: {from: 2027-01-01, |; to,shifts,closed",
        "calendar: {shifts: {day: {|}}}; from,to,days,rests",
        "calendar:\\n  shifts:\\n    day: {days: [Mon, |; Tue,Wed,Sun",
        "machines:\\n  mill:\\n    kind: |; hammer-mill,bale-feeder,bin",
        "machines:\\n  mill:\\n    kind: hammer-mill\\n    |; power,grinding,screens,stops",
        "machines:\\n  mill: {kind: hammer-mill, grinding: {|; energy,measured_at,exponent",
        "machines:\\n  bin: {kind: bin, |; holds,start_at",
        "machines:\\n  saw: {kind: separating-saw, stops: {jam: {|; every,counted,lasts,needs",
        "machines:\\n  saw: {kind: separating-saw, stops: {jam: {counted: |; running,mass,crewed,calendar",
        "machines:\\n  saw: {kind: separating-saw, stops: {jam: {every: {|; exponential,normal,weibull",
        "machines:\\n  saw: {kind: separating-saw, stops: {jam: {every: {normal: {|; mean,sd,low,high",
        "crops: {stalk: {}}\\nlines:\\n  a:\\n    crop: |; stalk",
        "machines: {saw: {}}\\nproducts: {hurd: {}}\\nlines:\\n  a:\\n    steps:\\n      saw: {to: |; saw,hurd",
        "machines: {saw: {}}\\nlines:\\n  a:\\n    steps:\\n      |; saw",
        "lines: {a: {}}\\nseason:\\n  - {line: |; a",
        "calendar: {shifts: {day: {}}}\\nseason:\\n  - {shifts: [|; day",
        "options:\\n  big:\\n    |; cost,with",
        "options:\\n  big:\\n    with:\\n      machines:\\n        mill: {kind: hammer-mill, |; power",
        "products:\\n  hurd: {|; price,package,orders",
        "crops:\\n  stalk:\\n    composition: {|; long_fiber,hurd"
      })
  void whatMayStandThereIsOffered(String text, String due) {
    String written = text.replace("\\n", "\n");
    int at = written.indexOf('|');
    assertThat(KeyOffers.at(written.replace("|", ""), at))
        .extracting(KeyOffers.Offer::label)
        .contains(due.strip().split(","));
  }

  @Test
  void whatStandsThereAlreadyIsNotOfferedAndWhatIsDueIsMarked() {
    List<KeyOffers.Offer> offers = KeyOffers.at("calendar: {from: 2027-01-01, }", 29);
    assertThat(offers).extracting(KeyOffers.Offer::label).doesNotContain("from");
    assertThat(offers)
        .contains(
            new KeyOffers.Offer(
                "to",
                "due",
                "Last day, inclusive; the horizon ends at its 24:00. At most 50 years after the first."));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "hurd|line: 1; Version of this format",
        "machines: {mill: {kind: hammer-mill, po|wer: 25 hp}}; Rated power of the motor",
        "season:\\n  - {li|ne: a}; The line that has the building",
        "options: {big: {co|st: 5 USD}}; (money"
      })
  void aKeySaysWhatItMeans(String text, String due) {
    String written = text.replace("\\n", "\n");
    int at = written.indexOf('|');
    assertThat(KeyOffers.meaning(written.replace("|", ""), at))
        .hasValueSatisfying(said -> assertThat(said).contains(due.strip()));
  }

  @Test
  void aNameOfTheUsersHasNoMeaning() {
    assertThat(KeyOffers.meaning("machines: {mill: {kind: bin}}", 12)).isEmpty();
  }

  /** Half of the example is a text that somebody is writing. */
  @Test
  void everyFewOffsetsOfTheExampleAreAnsweredWithKnownWords() {
    answers(97);
  }

  @Tag("proof")
  @Test
  void everyOffsetOfTheExampleIsAnsweredWithKnownWords() {
    answers(1);
  }

  private static void answers(int step) {
    Set<String> known = new TreeSet<>();
    Stream.of(MapKeys.values()).forEach(map -> known.addAll(map.keys()));
    known.addAll(RandomQuantityReader.NAMES);
    int some = 0;
    for (int at = 0; at <= EXAMPLE.length(); at += step) {
      for (String text : List.of(EXAMPLE, EXAMPLE.substring(0, at))) {
        List<KeyOffers.Offer> offers = KeyOffers.at(text, at);
        some += offers.isEmpty() ? 0 : 1;
        assertThat(offers)
            .filteredOn(offer -> offer.kind().matches("due|key"))
            .allMatch(offer -> known.contains(offer.label()));
      }
    }
    assertThat(some).isGreaterThan(EXAMPLE.length() / step / 2);
  }

  /** A row whose type the walk does not know would offer nothing. */
  @Test
  void everyMapOfTheTableIsReachedFromThePlant() {
    // A range stands under never and keep, which stand among the names of choices.
    Set<String> reached = new TreeSet<>(Set.of("PLANT", "CHOICE_RANGE"));
    Set<String> seen = new TreeSet<>();
    while (!seen.equals(reached)) {
      for (String name : List.copyOf(reached)) {
        if (seen.add(name)) {
          KeyTable.section(name).keys().forEach(key -> add(key.type(), reached));
        }
      }
    }
    assertThat(reached).containsAll(Stream.of(MapKeys.values()).map(Enum::name).toList());
  }

  private static void add(String type, Set<String> reached) {
    for (String word : type.split("[^A-Z_]+")) {
      if (word.equals("MACHINE")) {
        MachineBinder.KINDS.values().forEach(kind -> reached.add(kind.name()));
      } else if (KeyTable.names().contains(word)) {
        reached.add(word);
      }
    }
    if (type.endsWith("may vary")) {
      RandomQuantityReader.NAMES.stream()
          .map(String::toUpperCase)
          .filter(KeyTable.names()::contains)
          .forEach(reached::add);
    }
  }
}
