package hurdline.fit;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.Distribution;
import hurdline.random.Lognormal;
import hurdline.random.RandomStream;
import hurdline.random.RandomStreams;
import hurdline.records.Records;
import hurdline.records.RecordsFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How long a truck stands on the scale, from tickets of trucks that queue for it. */
class ScaleFitsTest {
  private static final int SEASONS = 40;
  private static final String KEY = "deliveries.stalk.weigh.lasts";
  private static final DateTimeFormatter SECOND =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss");
  private static final double MEAN_S = 300;
  private static final Distribution TRUTH = new Lognormal(MEAN_S, 90, 0, Double.POSITIVE_INFINITY);

  @TempDir private Path folder;

  private static Plant plant(int scales) {
    String text =
        MilledSeason.PLANT
            + """
            resources: {scale: {count: %d}}
            deliveries:
              stalk:
                loads: {every: 1 h, bales: 30, from: 2027-01-04, to: 2027-06-30, hours: {from: "07:00", to: "18:00", days: [Mon, Tue, Wed, Thu, Fri]}}
                weigh: {lasts: 4 min, needs: scale}
            """
                .formatted(scales);
    return PlantFile.of("mill.yaml", text).plant();
  }

  /**
   * Ten trucks a day of which three come at once: each is weighed, unloaded for 20 minutes and
   * weighed again, on one scale in the order in which they come to it.
   */
  private Records records(int season, Plant plant) throws IOException {
    RandomStream stream = new RandomStreams(91).of(season, "scale");
    List<String> rows = new ArrayList<>();
    for (int day = 0; day < 5; day++) {
      LocalDateTime open = LocalDate.of(2027, 1, 4).plusDays(day).atTime(7, 0);
      PriorityQueue<double[]> asked =
          new PriorityQueue<>((one, other) -> Double.compare(one[0], other[0]));
      double[][] times = new double[10][3];
      for (int i = 0; i < 10; i++) {
        times[i][0] = 7_200 * (i / 3) + 600 * stream.next();
        asked.add(new double[] {times[i][0], i, 0});
      }
      double freeS = 0;
      while (!asked.isEmpty()) {
        double[] next = asked.poll();
        freeS = Math.max(freeS, next[0]) + TRUTH.at(stream.next());
        times[(int) next[1]][next[2] == 0 ? 1 : 2] = freeS;
        if (next[2] == 0) {
          asked.add(new double[] {freeS + 1_200, next[1], 1});
        }
      }
      for (double[] of : times) {
        rows.add(
            String.format(
                "%d,stalk,%s,%s,%s,13000,kg,30",
                rows.size() + 1, at(open, of[0]), at(open, of[1]), at(open, of[2])));
      }
    }
    Files.writeString(
        folder.resolve("tickets.csv"),
        "ticket,crop,gate in,weighed in,gate out,net,unit,bales\n"
            + String.join("\n", rows)
            + "\n");
    return RecordsFolder.read(folder, plant);
  }

  private static String at(LocalDateTime open, double seconds) {
    return SECOND.format(open.plusSeconds(Math.round(seconds)));
  }

  private static AmountFit fit(Records records, Plant plant) {
    StopClocks clocks = new StopClocks(plant, records, new LineLoads(Map.of()));
    RepairFits lengths =
        new RepairFits(records, clocks, new RandomStreams(1), Double.POSITIVE_INFINITY);
    return new JobFits(plant, records, lengths)
        .all().stream()
            .map(JobFits.JobFit::fit)
            .filter(fit -> fit.key().equals(KEY))
            .findFirst()
            .orElseThrow();
  }

  /**
   * In 40 seasons the 95 % intervals hold the truth 34 times or more: of right ones fewer would in
   * 0.5 % (binomial). The time from the gate, with the wait in it, is a quarter too long, or the
   * trial shows nothing.
   */
  @Test
  void aWaitForTheScaleIsNotInIt() throws IOException {
    Plant plant = plant(1);
    int holds = 0;
    double mean = 0;
    double withWait = 0;
    for (int season = 1; season <= SEASONS; season++) {
      Records records = records(season, plant);
      AmountFit fit = fit(records, plant);
      assertThat(fit.count()).isEqualTo(50);
      holds += Math.abs(Math.log(fit.meanInUnit() / MEAN_S)) < 1.96 * fit.errorShare() ? 1 : 0;
      mean += fit.meanInUnit() / MEAN_S / SEASONS;
      withWait +=
          records.tickets().stream()
                  .mapToDouble(one -> one.times().weighedInS() - one.inS())
                  .average()
                  .orElseThrow()
              / MEAN_S
              / SEASONS;
    }
    assertThat(holds).isGreaterThanOrEqualTo(34);
    assertThat(mean).isBetween(0.98, 1.02);
    assertThat(withWait).isGreaterThan(1.25);
  }

  @Test
  void onSeveralScalesNoTicketSaysForWhichATruckWaited() throws IOException {
    Plant plant = plant(2);
    AmountFit fit = fit(records(1, plant), plant);
    assertThat(fit.taken()).isInstanceOf(Taken.Left.class);
    assertThat(((Taken.Left) fit.taken()).why()).startsWith("on several scales");
  }
}
