package hurdline.records;

import hurdline.account.Trace;
import hurdline.measure.EventKind;
import hurdline.measure.Measure;
import hurdline.plant.Calendar;
import hurdline.plant.Crop;
import hurdline.plant.Plant;
import hurdline.plant.Product;
import hurdline.plant.SeasonEntry;
import hurdline.random.RandomStreams;
import hurdline.simulation.CompiledPlant;
import hurdline.simulation.results.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * A simulated season of a plant with one line in one shift, without error and by form of its crop:
 * shifts, loads, the yard on Mondays, and what was fed and made in each week.
 */
public final class RecordedForms implements Trace {
  private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");
  private static final double DAY_S = 86_400;

  private final Plant plant;
  private final CompiledPlant stage;
  private final LocalDateTime start;
  private final List<String> loads = new ArrayList<>();
  private final List<String> counts = new ArrayList<>();
  private int countedDay = -1;

  private RecordedForms(Plant plant) {
    this.plant = plant;
    stage = CompiledPlant.of(plant);
    start = plant.calendar().from().atStartOfDay();
  }

  /** Writes a season into a folder, which must be there. */
  public static void write(Plant plant, long seed, Path folder) throws IOException {
    RecordedForms season = new RecordedForms(plant);
    Outcome outcome = season.stage.replication().run(new RandomStreams(seed), 1, season);
    lines(folder, "shifts.csv", "date,shift,from,to,rest from,rest to", season.shifts());
    lines(folder, "tickets.csv", "ticket,crop,gate in,net,unit,bales", season.loads);
    lines(folder, "yard.csv", "date,crop,count", season.counts);
    lines(folder, "made.csv", "date,shift,what,count,mass,unit", season.made(outcome));
    Files.writeString(
        folder.resolve("records.yaml"),
        "records: 1\nfrom: " + plant.calendar().from() + "\nto: " + plant.calendar().to() + "\n");
  }

  private static void lines(Path folder, String file, String head, List<String> rows)
      throws IOException {
    Files.writeString(folder.resolve(file), head + "\n" + String.join("\n", rows) + "\n");
  }

  @Override
  public void note(double clockS, String where, EventKind what, double amount) {
    if (what == EventKind.AT_THE_GATE && amount > 0) {
      double kg = amount * bale(where).bale().massKg().mean();
      loads.add(
          String.format(
              Locale.ROOT,
              "%d,%s,%s,%.0f,kg,%.0f",
              loads.size() + 1,
              where,
              MINUTE.format(start.plusSeconds(Math.round(clockS))),
              kg,
              amount));
    }
  }

  private Crop bale(String crop) {
    return plant.crops().stream().filter(of -> of.name().equals(crop)).findFirst().orElseThrow();
  }

  @Override
  public void standing(double clockS, int[] state, int[] inYard) {
    int day = (int) (clockS / DAY_S);
    LocalDate date = plant.calendar().from().plusDays(day);
    if (day != countedDay && date.getDayOfWeek() == DayOfWeek.MONDAY) {
      countedDay = day;
      for (int crop = 0; crop < inYard.length; crop++) {
        counts.add(date + "," + stage.yard().crop(crop) + "," + inYard[crop]);
      }
    }
  }

  private List<String> shifts() {
    SeasonEntry.Campaign campaign = (SeasonEntry.Campaign) plant.season().get(0);
    Calendar.Shift shift = plant.calendar().shifts().get(0);
    return campaign
        .from()
        .datesUntil(campaign.to().plusDays(1))
        .filter(date -> shift.days().contains(date.getDayOfWeek()))
        .filter(date -> !plant.calendar().closed().contains(date))
        .map(date -> date + "," + shift.name() + ",06:00,15:30,11:00,11:30")
        .toList();
  }

  private List<String> made(Outcome outcome) {
    List<String> rows = new ArrayList<>();
    for (Crop crop : plant.crops()) {
      double[] fedT = fedT(outcome, crop);
      double pieces = outcome.value(Measure.INTAKE_FED.of(crop.name()));
      for (Crop form : plant.forms(crop.name())) {
        boolean isOther = crop.formOf().isEmpty() && form.formOf().isPresent();
        pieces -= isOther ? outcome.value(Measure.INTAKE_FED.of(form.name())) : 0;
      }
      double allT = java.util.Arrays.stream(fedT).sum();
      for (int week = 0; week < fedT.length; week++) {
        double count = fedT[week] * pieces / allT;
        rows.add(row(week, crop.name() + " fed", String.format(Locale.ROOT, "%.3f,,", count)));
      }
    }
    for (Product product : plant.products()) {
      double[] madeT = week(outcome, Measure.PRODUCT_MASS.of(product.name()));
      for (int week = 0; week < madeT.length; week++) {
        rows.add(row(week, product.name(), String.format(Locale.ROOT, ",%.3f,t", madeT[week])));
      }
    }
    return rows;
  }

  /** Of a crop without its other forms. */
  private double[] fedT(Outcome outcome, Crop crop) {
    double[] fedT = week(outcome, Measure.MASS_FED.of(crop.name()));
    if (crop.formOf().isEmpty()) {
      for (Crop form : plant.forms(crop.name())) {
        double[] others = week(outcome, Measure.MASS_FED.of(form.name()));
        IntStream.range(0, fedT.length)
            .filter(week -> form.formOf().isPresent())
            .forEach(week -> fedT[week] -= others[week]);
      }
    }
    return fedT;
  }

  private static double[] week(Outcome outcome, String measure) {
    int column = outcome.weekColumns().stream().map(Outcome.Column::name).toList().indexOf(measure);
    return java.util.Arrays.stream(outcome.weeks()).mapToDouble(week -> week[column]).toArray();
  }

  private String row(int week, String what, String amount) {
    return stage.roster().weeks().firstDate(week) + ",day," + what + "," + amount;
  }
}
