package hurdline.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.FitCheckRow;
import hurdline.plant.Plant;
import hurdline.random.Distribution;
import hurdline.random.Lognormal;
import hurdline.random.RandomStream;
import hurdline.random.RandomStreams;
import hurdline.records.Account;
import hurdline.records.Folder;
import hurdline.records.Records;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How long changes of packages and the jobs of trucks take, from a log and from tickets. */
class JobFitsTest {
  private static final int SEASONS = 40;
  private static final DateTimeFormatter SECOND =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss");
  private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");

  @TempDir private Path temp;
  private Folder folder;

  @BeforeEach
  void open() {
    folder = new Folder(temp);
    folder.with("shifts.csv", "date,shift,from,to\n2027-01-05,day,06:00,14:00\n");
  }

  private static Optional<AmountFit> fit(Records records, String key) {
    Plant plant = Folder.plant();
    StopClocks clocks = new StopClocks(plant, records, new LineLoads(Map.of()));
    RepairFits lengths =
        new RepairFits(records, clocks, new RandomStreams(1), Double.POSITIVE_INFINITY);
    return new JobFits(plant, records, lengths)
        .all().stream().map(JobFits.JobFit::fit).filter(fit -> fit.key().equals(key)).findFirst();
  }

  private static String why(Records records, int line) {
    return records.account().entries().stream()
        .filter(entry -> entry.file().equals("changes.csv") && entry.line() == line)
        .map(Account.Entry::why)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aChangeIsOfItsPackageByAnyOfItsNames() {
    folder.with(
        "changes.csv",
        """
        Package;Full;lasted (s)
        fiber_bale;2027-01-05 07:00;90
        fiber_bele;2027-01-05 07:20;92
        long_fiber_bales;2027-01-05 07:40;1,5 min
        fiber_press;2027-01-05 08:00;88
        """);
    Records records = folder.read();
    assertThat(records.changes()).hasSize(4).allMatch(c -> c.packaging().equals("fiber_bale"));
    assertThat(records.changes().get(2).lastedS()).isCloseTo(90, within(1e-9));
    assertThat(records.account().entries())
        .anyMatch(entry -> entry.why().contains("\"fiber_bele\" read as fiber_bale"));
    AmountFit fit = fit(records, "packages.fiber_bale.change").orElseThrow();
    assertThat(fit.meanInUnit()).isCloseTo(90, within(0.5));
  }

  @Test
  void whatCannotBeAChangeIsSetAsideWithItsReason() {
    folder.with(
        "changes.csv",
        """
        what,began,ended
        fiber_bale,2027-01-05 07:00:00,2027-01-05 07:01:30
        fiber_bale,2027-01-05 07:00:00,2027-01-05 07:01:30
        wheelbarrow,2027-01-05 07:20,2027-01-05 07:22
        fiber_bale,2027-01-05 08:00,2027-01-05 07:58
        fiber_bale,2027-01-05 08:00,2027-01-05 18:00
        fiber_bale,2027-02-30 08:00,08:02
        fiber_bale,2027-01-05 09:00,
        fiber_bale,2027-01-05 23:59,00:01
        """);
    Records records = folder.read();
    assertThat(records.changes()).hasSize(2);
    assertThat(records.changes().get(1).lastedS()).isEqualTo(120);
    assertThat(why(records, 3)).isEqualTo("same as line 2");
    assertThat(why(records, 4)).startsWith("\"wheelbarrow\" is no package, no product of one");
    assertThat(why(records, 5)).isEqualTo("ended before it began");
    assertThat(why(records, 6)).isEqualTo("longer than 4 h: no change of a package");
    assertThat(why(records, 7)).contains("no such date or time");
    assertThat(why(records, 8)).isEqualTo("neither an end nor a length");
  }

  /** Rows of the log of stops whose reason is a change are that and no stop of the machine. */
  @Test
  void changesInTheLogOfStopsCountToo() {
    folder.with(
        "stops.csv",
        """
        machine,began,ended,reason
        fiber_press,2027-01-05 07:00,2027-01-05 07:02,bale change
        fiber_press,2027-01-05 08:00,2027-01-05 08:03,Bale change
        fiber_press,2027-01-05 09:00,2027-01-05 09:02,package_change
        mill,2027-01-05 10:00,2027-01-05 10:40,screen change
        mill,2027-01-05 12:00,2027-01-05 12:44,Screen_change
        """);
    Records records = folder.read();
    AmountFit bale = fit(records, "packages.fiber_bale.change").orElseThrow();
    assertThat(bale.count()).isEqualTo(3);
    assertThat(fit(records, "machines.mill.screen_change").orElseThrow().meanInUnit())
        .isCloseTo(42 * 60, within(1e-6));
    LineLoads loads = new LineLoads(Map.of());
    assertThat(Fit.of(Folder.plant(), records, loads, 1).stops()).isEmpty();
  }

  /** 60 changes a season, 40 seasons: fewer than 34 intervals hold by chance in 0.5 %. */
  @Test
  void theTruthLiesInItsInterval() {
    Distribution truth = new Lognormal(200, 60, 0, Double.POSITIVE_INFINITY);
    int holds = 0;
    for (int season = 1; season <= SEASONS; season++) {
      RandomStream stream = new RandomStreams(77).of(season, "changes");
      StringBuilder rows = new StringBuilder("what,began,ended\n");
      LocalDateTime at = LocalDate.of(2027, 1, 5).atTime(6, 0);
      for (int i = 0; i < 60; i++) {
        at = at.plusMinutes(17);
        LocalDateTime end = at.plusSeconds(Math.round(truth.at(stream.next())));
        rows.append("fiber_bale,").append(SECOND.format(at)).append(',');
        rows.append(SECOND.format(end)).append('\n');
      }
      folder.with("changes.csv", rows.toString());
      AmountFit fit = fit(folder.read(), "packages.fiber_bale.change").orElseThrow();
      holds += Math.abs(Math.log(fit.meanInUnit() / 200)) < 1.96 * fit.errorShare() ? 1 : 0;
    }
    assertThat(holds).isGreaterThanOrEqualTo(34);
  }

  private void tickets(String times, int rows, boolean unloads) {
    RandomStream stream = new RandomStreams(5).of(1, "trucks");
    StringBuilder text = new StringBuilder("ticket,crop,truck,net,unit,bales," + times + "\n");
    LocalDateTime at = LocalDate.of(2027, 8, 9).atTime(7, 0);
    for (int i = 0; i < rows; i++) {
      LocalDateTime load = at.plusHours(3L * (i % 4)).plusDays(i / 4);
      LocalDateTime loaded = load.plusSeconds(Math.round(60 * (30 + 10 * stream.next())));
      LocalDateTime in = loaded.plusSeconds(Math.round(60 * (38 + 4 * stream.nextNormal())));
      LocalDateTime unload = in.plusMinutes(6);
      LocalDateTime unloaded = unload.plusSeconds(Math.round(60 * (20 + 10 * stream.next())));
      text.append(i).append(",stalk,T-").append(i % 2).append(",13000,kg,34");
      for (LocalDateTime one : List.of(load, loaded, in, unload)) {
        text.append(',').append(MINUTE.format(one));
      }
      text.append(unloads ? "," + MINUTE.format(unloaded) : "");
      text.append(',').append(MINUTE.format(unloaded.plusMinutes(5))).append('\n');
    }
    folder.with("tickets.csv", text.toString());
  }

  @Test
  void aTruckThatTellsItsTimesGivesLoadingDrivingAndUnloading() {
    tickets("load began,left field,time in,unload began,unload ended,time out", 60, true);
    Records records = folder.read();
    Map<String, Double> minutes =
        Map.of("trucks.load.lasts", 35.0, "trucks.drive", 38.0, "unload.lasts", 25.0);
    minutes.forEach(
        (key, truth) -> {
          AmountFit fit = fit(records, "deliveries.stalk." + key).orElseThrow();
          assertThat(fit.count()).as(key).isEqualTo(60);
          assertThat(Math.abs(Math.log(fit.meanInUnit() / 60 / truth)))
              .as(key)
              .isLessThan(3 * fit.errorShare());
          assertThat(fit.errorShare()).as(key).isBetween(0.003, 0.04);
        });
    FitCheckRow away =
        new SeasonChecks(Folder.plant(), records, new LineLoads(Map.of()))
            .all().stream()
                .filter(check -> check.what().startsWith("time from the gate back"))
                .findFirst()
                .orElseThrow();
    assertThat(away.rows()).isEqualTo(30);
    assertThat(away.found()).isBetween(280.0, 360.0);
  }

  @Test
  void unloadingWithoutItsEndIsLeftWhereTrucksAreWeighedOut() {
    tickets("load began,left field,time in,unload began,time out", 12, false);
    AmountFit fit = fit(folder.read(), "deliveries.stalk.unload.lasts").orElseThrow();
    assertThat(fit.taken()).isInstanceOf(Taken.Left.class);
    assertThat(((Taken.Left) fit.taken()).why()).startsWith("no ticket says when unloading ended");
  }

  @Test
  void timesThatDoNotFollowEachOtherAreNotUsed() {
    folder.with(
        "tickets.csv",
        "ticket,crop,net,unit,bales,gate in,unload began,unload ended,gate out\n"
            + "1,stalk,13000,kg,34,2027-08-09 09:00,2027-08-09 08:10,2027-08-09 09:30,2027-08-09 09:40\n");
    Records records = folder.read();
    assertThat(records.tickets().get(0).times().unloadBeganS()).isNaN();
    assertThat(records.account().entries())
        .anyMatch(entry -> entry.why().contains("times do not follow each other"));
  }
}
