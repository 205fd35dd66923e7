package hurdline.fit;

import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.RandomStream;
import hurdline.random.RandomStreams;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Locale;

/**
 * The records of half a year of a mill whose energy is known: a screen stays for three days, every
 * fourth day has two; the line feeds it straight on coarse, where it idles in the feeder's stops,
 * and through a bin that never runs empty on the others.
 */
final class MilledSeason {
  static final double E0 = 12;
  static final double N = 0.8;
  private static final double[] OPENING_MM = {12, 6, 3};
  private static final double[] T_PER_H = {2, 1.3, 0.75};
  private static final double IDLE_KW = 3;
  private static final int DAYS = 170;

  static final String PLANT =
      """
      hurdline: 1
      plant: A mill
      calendar: {from: 2027-01-04, to: 2027-06-30, shifts: {day: {days: [Mon, Tue, Wed, Thu, Fri], from: "06:00", to: "14:00"}}}
      components: [hurd]
      crops: {stalk: {bale: {mass: 500 kg}, composition: {hurd: 100 %}}}
      machines:
        feeder: {kind: bale-feeder, power: 5 kW}
        bin: {kind: bin, holds: 5 t}
        mill: {kind: hammer-mill, power: 25 kW, grinding: {energy: 10 kWh/t, measured_at: 6 mm, exponent: 1, motor_load: 80 %}, screens: {coarse: {opening: 12 mm}, medium: {opening: 6 mm}, fine: {opening: 3 mm}}}
        bagger: {kind: bag-filler}
      products: {large: {package: bag}, middling: {package: bag}, small: {package: bag}}
      packages: {bag: {mass: 200 kg}}
      lines:
        stalk_line:
          crop: stalk
          feed: feeder
          steps:
            feeder: {rate: 4 t/h, to: bin}
            bin: {to: mill}
            mill: {mix: [{screen: coarse, share: 50 %}, {screen: medium, share: 30 %}, {screen: fine, share: 20 %}], min_run: 4 h, makes: {coarse: large, medium: middling, fine: small}, to: bagger}
            bagger: {rate: 6 t/h, packs: from-mill}
      season: [{line: stalk_line, from: 2027-01-04, to: 2027-06-30, shifts: [day]}]
      yard: {on_hand: {stalk: 4000 bales}, places: {barn: {holds: 4000 bales}}}
      """;

  private final RandomStream stream;
  private final StringBuilder shifts = new StringBuilder("date,shift,from,to\n");
  private final StringBuilder made = new StringBuilder("date,shift,what,count,mass,unit\n");
  private final StringBuilder stops = new StringBuilder("machine,began,ended,reason\n");
  private final StringBuilder power = new StringBuilder();

  MilledSeason(int number, String meter) {
    stream = new RandomStreams(412).of(number, "mill");
    power.append("hour from,kWh,").append(meter).append('\n');
    int day = 0;
    for (LocalDate date = LocalDate.of(2027, 1, 4);
        date.isBefore(LocalDate.of(2027, 1, 4).plusDays(DAYS));
        date = date.plusDays(1)) {
      if (date.getDayOfWeek() != DayOfWeek.SATURDAY && date.getDayOfWeek() != DayOfWeek.SUNDAY) {
        work(date, day++);
      }
    }
  }

  static Plant plant() {
    return PlantFile.of("mill.yaml", PLANT).plant();
  }

  /** kWh/t of the truth. */
  static double energy(int screen) {
    return E0 * Math.pow(6 / OPENING_MM[screen], N);
  }

  private void work(LocalDate date, int day) {
    shifts.append(date).append(",day,06:00,14:00\n");
    int first = day / 3 % 3;
    double stoodH = stream.next() < 0.6 ? Math.round(180 * stream.next()) / 60.0 : 0;
    double ofFirst = day % 4 == 3 ? 0.4 + 0.2 * stream.next() : 1;
    double[] t = new double[3];
    t[first] = ofFirst * milled(first, stoodH);
    t[(first + 1) % 3] += (1 - ofFirst) * milled((first + 1) % 3, stoodH);
    double kWh = 0;
    double coarse = first == 0 ? ofFirst : first == 2 ? 1 - ofFirst : 0;
    for (int screen = 0; screen < 3; screen++) {
      kWh += energy(screen) * t[screen];
      if (t[screen] > 0) {
        made.append(
            String.format(
                Locale.ROOT,
                "%s,day,%s,%.0f,%.0f,kg%n",
                date,
                new String[] {"large", "middling", "small"}[screen],
                Math.floor(5 * t[screen]),
                1000 * t[screen] * (1 + 0.01 * stream.nextNormal())));
      }
    }
    kWh = (kWh + IDLE_KW * coarse * stoodH) * (1 + 0.01 * stream.nextNormal());
    if (stoodH > 0) {
      stops.append(
          String.format(
              Locale.ROOT,
              "feeder,%s 07:00,%s %02d:%02d,choke%n",
              date,
              date,
              7 + (int) stoodH,
              (int) Math.round(60 * stoodH) % 60));
    }
    double idleH = coarse == 1 ? stoodH : 0;
    double kW = (kWh - IDLE_KW * idleH) / (8 - idleH);
    for (int hour = 0; hour < 8; hour++) {
      double idle = Math.max(0, Math.min(hour + 1, 1 + idleH) - Math.max(hour, 1));
      double one = idle * IDLE_KW + (1 - idle) * kW;
      power.append(String.format(Locale.ROOT, "%s %02d:00,%.2f,%.3f%n", date, 6 + hour, one, one));
    }
  }

  private double milled(int screen, double stoodH) {
    double hours = screen == 0 ? 8 - stoodH : 8;
    return T_PER_H[screen] * hours * Math.exp(0.06 * stream.nextNormal());
  }

  void write(Path folder, boolean withStops) throws IOException {
    Files.writeString(folder.resolve("shifts.csv"), shifts);
    Files.writeString(folder.resolve("made.csv"), made);
    Files.writeString(folder.resolve("power.csv"), power);
    if (withStops) {
      Files.writeString(folder.resolve("stops.csv"), stops);
    } else {
      Files.deleteIfExists(folder.resolve("stops.csv"));
    }
  }
}
