package hurdline.fit;

import hurdline.random.Distribution;
import hurdline.random.RandomStream;
import hurdline.random.RandomStreams;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The records of a season whose laws are known, made event by event without any of the program's
 * clocks: machines that stand together, a shift a day with a rest, times rounded to the minute,
 * short repairs never written down.
 */
final class MadeSeason {
  private static final int MINUTE_S = 60;
  private static final int SHIFT_BEGINS = 6 * 60;
  private static final int REST_BEGINS = 10 * 60;
  private static final int REST_ENDS = REST_BEGINS + 30;
  private static final int SHIFT_ENDS = 14 * 60 + 30;
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm").withZone(ZoneOffset.UTC);

  /**
   * @param everyS running time between two stops
   * @param writtenFromS shorter repairs are not in the log
   */
  record Kind(
      String machine,
      String reason,
      Distribution everyS,
      Distribution lastsS,
      double writtenFromS) {}

  private final List<Kind> kinds;
  private final RandomStream stream;
  private final double[] leftS;
  private final double[] repairS;
  private final double[] beganS;
  private final double[] lengthS;
  private final List<String> rows = new ArrayList<>();
  private final StringBuilder shifts = new StringBuilder("date,shift,from,to,rest from,rest to\n");

  MadeSeason(List<Kind> kinds, int number) {
    this.kinds = kinds;
    stream = new RandomStreams(1931).of(number, "season");
    leftS = kinds.stream().mapToDouble(kind -> kind.everyS().at(stream.next())).toArray();
    repairS = new double[kinds.size()];
    beganS = new double[kinds.size()];
    lengthS = new double[kinds.size()];
  }

  /** Weekdays of so many weeks from 5 January 2026 on. */
  MadeSeason worked(int weeks) {
    LocalDate first = LocalDate.of(2026, 1, 5);
    for (LocalDate day = first; day.isBefore(first.plusWeeks(weeks)); day = day.plusDays(1)) {
      if (day.getDayOfWeek() != DayOfWeek.SATURDAY && day.getDayOfWeek() != DayOfWeek.SUNDAY) {
        shifts.append(day).append(",day,06:00,14:30,10:00,10:30\n");
        double midnightS = day.atStartOfDay().toEpochSecond(ZoneOffset.UTC);
        work(midnightS + SHIFT_BEGINS * MINUTE_S, midnightS + REST_BEGINS * MINUTE_S);
        work(midnightS + REST_ENDS * MINUTE_S, midnightS + SHIFT_ENDS * MINUTE_S);
      }
    }
    return this;
  }

  private void work(double fromS, double toS) {
    double nowS = fromS;
    while (nowS < toS) {
      boolean runs = java.util.Arrays.stream(repairS).allMatch(left -> left <= 0);
      double stepS = toS - nowS;
      for (int i = 0; i < kinds.size(); i++) {
        double due = repairS[i] > 0 ? repairS[i] : runs ? leftS[i] : Double.POSITIVE_INFINITY;
        stepS = Math.min(stepS, due);
      }
      nowS += stepS;
      for (int i = 0; i < kinds.size(); i++) {
        pass(i, stepS, runs, nowS);
      }
    }
  }

  private void pass(int i, double stepS, boolean runs, double nowS) {
    if (repairS[i] > 0) {
      repairS[i] -= stepS;
      if (repairS[i] <= 1e-9) {
        repairS[i] = 0;
        leftS[i] = kinds.get(i).everyS().at(stream.next());
        write(i, nowS);
      }
    } else if (runs) {
      leftS[i] -= stepS;
      if (leftS[i] <= 1e-9) {
        repairS[i] = kinds.get(i).lastsS().at(stream.next());
        beganS[i] = nowS;
        lengthS[i] = repairS[i];
      }
    }
  }

  private void write(int i, double endedS) {
    Kind kind = kinds.get(i);
    if (lengthS[i] >= kind.writtenFromS()) {
      rows.add(
          kind.machine() + "," + minute(beganS[i]) + "," + minute(endedS) + "," + kind.reason());
    }
  }

  private static String minute(double epochS) {
    return TIME.format(Instant.ofEpochSecond(Math.round(epochS / MINUTE_S) * MINUTE_S));
  }

  String shifts() {
    return shifts.toString();
  }

  String stops() {
    List<String> order = new ArrayList<>(rows);
    order.sort(Comparator.comparing((String row) -> row.split(",")[1]));
    return "machine,began,ended,reason\n" + String.join("\n", order) + "\n";
  }
}
