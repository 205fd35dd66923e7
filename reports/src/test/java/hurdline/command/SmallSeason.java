package hurdline.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;

/** Two invented weeks of the plant to start from, as a folder of records. */
final class SmallSeason {
  private static final Path SHIPPED = Path.of(System.getProperty("hurdline.root"), "line-configs");

  private SmallSeason() {}

  static Path plant(Path folder) throws IOException {
    return Files.copy(SHIPPED.resolve("small.yaml"), folder.resolve("plant.yaml"));
  }

  /** Shifts, stock and what was fed: half of what the line can. */
  static Path fed(Path folder) throws IOException {
    Path records = Files.createDirectories(folder);
    StringBuilder shifts = new StringBuilder("date,shift,from,to,rest from,rest to\n");
    StringBuilder made = new StringBuilder("date,shift,what,count\n");
    for (int day = 0; day < 12; day++) {
      LocalDate date = LocalDate.of(2026, 3, 2).plusDays(day);
      if (date.getDayOfWeek().getValue() < 6) {
        shifts.append(date).append(",day,07:00,15:30,11:00,11:30\n");
        made.append(date).append(",day,stalk fed,7\n");
      }
    }
    Files.writeString(records.resolve("shifts.csv"), shifts);
    Files.writeString(records.resolve("made.csv"), made);
    Files.writeString(records.resolve("yard.csv"), "date,crop,count\n2026-03-02,stalk,1400\n");
    return records;
  }

  /** The same with chokes of the saw and tickets of bales. */
  static Path whole(Path folder) throws IOException {
    Path records = fed(folder);
    StringBuilder stops = new StringBuilder("machine,began,ended,reason\n");
    StringBuilder tickets = new StringBuilder("ticket,crop,net,unit,bales,moisture\n");
    for (int row = 0; row < 40; row++) {
      LocalDate date = LocalDate.of(2026, 3, 2 + row / 8);
      stops.append(
          String.format(
              Locale.ROOT,
              "saw,%s %02d:%02d,%s %02d:%02d,choke%n",
              date,
              7 + row % 8,
              row * 7 % 25,
              date,
              7 + row % 8,
              row * 7 % 25 + 9 + row * 11 % 24));
      tickets.append(
          String.format(
              Locale.ROOT,
              "%d,stalk,%d,lb,30,%.1f%n",
              row,
              26_500 + row * 13 % 40 * 20,
              11 + row * 7 % 30 * .1));
    }
    Files.writeString(records.resolve("stops.csv"), stops);
    Files.writeString(records.resolve("tickets.csv"), tickets);
    return records;
  }
}
