package hurdline.compiled;

import hurdline.plant.CropTerms;
import hurdline.plant.Delivery;
import hurdline.plant.Grade;
import hurdline.plant.Job;
import hurdline.plant.LotAttribute;
import hurdline.plant.Money;
import hurdline.plant.Plant;
import hurdline.plant.Resource;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The deliveries compiled: crops by name, fields by crop and name, trucks by crop, resources by
 * name. A crop that nothing brings has no fields, no trucks and no loads.
 */
public final class Haulage {
  /**
   * What a job holds while it lasts.
   *
   * @param resources numbers of what it takes together; none where it needs nothing
   * @param ranks its rank in the queue of each
   */
  public record Needs(int[] resources, int[] ranks) {}

  /**
   * A field, its crop's number and the day of the horizon on which it should be ready; below 0
   * before the horizon.
   */
  public record CropField(int crop, Delivery.Field field, int readyDay) {}

  private final List<Optional<Delivery>> deliveries; // by crop
  private final List<CropField> fields;
  private final int[] firstField; // [crop], one more at the end
  private final double[] meanCropKg;
  private final int[] firstTruck;
  private final List<Needs> load;
  private final List<Needs> weigh;
  private final List<Needs> unload;
  private final ReceivingDays[] receiving; // [crop]
  private final TimeWindows[] loadsHours;
  private final double[] loadsEndS;
  private final PurchaseTerms terms;
  private final LocalDate firstDay;
  private final Basis basis;

  /** All that haulage is made of. */
  private record Basis(
      List<Delivery> deliveries,
      List<Resource> resources,
      List<String> crops,
      Map<String, CropTerms> terms,
      Map<String, List<Grade>> grades,
      List<LotAttribute> attributes,
      Roster roster) {
    static Basis of(Plant plant, YardPlan yard, Roster roster) {
      List<String> crops = IntStream.range(0, yard.crops()).mapToObj(yard::crop).toList();
      Map<String, CropTerms> terms = plant.money().map(Money::terms).orElse(Map.of());
      Map<String, List<Grade>> grades = plant.money().map(Money::grades).orElse(Map.of());
      return new Basis(
          plant.deliveries(), plant.resources(), crops, terms, grades, yard.attributes(), roster);
    }
  }

  private Haulage(Basis basis) {
    this.basis = basis;
    int crops = basis.crops().size();
    firstDay = basis.roster().date(0);
    terms =
        new PurchaseTerms(
            basis.crops(), basis.terms(), basis.grades(), basis.deliveries(), basis.attributes());
    deliveries = new ArrayList<>();
    fields = new ArrayList<>();
    firstField = new int[crops + 1];
    meanCropKg = new double[crops];
    firstTruck = new int[crops + 1];
    load = new ArrayList<>();
    weigh = new ArrayList<>();
    unload = new ArrayList<>();
    receiving = new ReceivingDays[crops];
    loadsHours = new TimeWindows[crops];
    loadsEndS = new double[crops];
    for (int crop = 0; crop < crops; crop++) {
      compile(crop, basis.crops().get(crop));
    }
  }

  public static Haulage of(Plant plant, YardPlan yard, Roster roster) {
    return new Haulage(Basis.of(plant, yard, roster));
  }

  /**
   * The haulage of a changed plant: this one where nothing that it is made of has changed.
   *
   * @param yard of the changed plant
   * @param roster of the changed plant
   */
  public Haulage changedTo(Plant plant, YardPlan yard, Roster roster) {
    Basis now = Basis.of(plant, yard, roster);
    return now.equals(basis) ? this : new Haulage(now);
  }

  /** By what loads are paid and rejected. */
  public PurchaseTerms terms() {
    return terms;
  }

  private void compile(int crop, String name) {
    Roster roster = basis.roster();
    Optional<Delivery> delivery =
        basis.deliveries().stream().filter(d -> d.crop().equals(name)).findFirst();
    deliveries.add(delivery);
    delivery.stream()
        .flatMap(d -> d.fields().stream())
        .sorted(Comparator.comparing(Delivery.Field::name))
        .forEach(field -> fields.add(new CropField(crop, field, roster.day(field.ready()))));
    firstField[crop + 1] = fields.size();
    meanCropKg[crop] = delivery.map(Haulage::meanCropKg).orElse(0.0);
    firstTruck[crop + 1] =
        firstTruck[crop] + delivery.flatMap(Delivery::trucks).map(Delivery.Trucks::count).orElse(0);
    load.add(needs("load", delivery.flatMap(Delivery::trucks).map(Delivery.Trucks::load)));
    weigh.add(needs("weigh", delivery.flatMap(Delivery::weigh)));
    unload.add(needs("unload", delivery.map(Delivery::unload)));
    loadsHours[crop] = roster.loadsHours(name);
    loadsEndS[crop] =
        delivery
            .flatMap(Delivery::loads)
            .map(loads -> roster.midnightS(roster.day(loads.to()) + 1))
            .orElse(Double.NEGATIVE_INFINITY);
    receiving[crop] = roster.receivingDays(name);
  }

  static double meanCropKg(Delivery delivery) {
    double yieldsKg = 0;
    for (Delivery.Field field : delivery.fields()) {
      yieldsKg += field.areaM2() * field.yieldKgPerM2().meanWithin(0, Double.POSITIVE_INFINITY);
    }
    return delivery.seasonFactor().meanWithin(0, Double.POSITIVE_INFINITY) * yieldsKg;
  }

  private Needs needs(String kind, Optional<Job> job) {
    List<Resource> byName =
        basis.resources().stream().sorted(Comparator.comparing(Resource::name)).toList();
    List<String> names = byName.stream().map(Resource::name).toList();
    int[] resources =
        job.map(Job::needs).orElse(List.of()).stream().mapToInt(names::indexOf).toArray();
    return new Needs(
        resources,
        IntStream.of(resources).map(one -> rank(byName.get(one).first(), kind)).toArray());
  }

  private static int rank(List<String> first, String kind) {
    return first.contains(kind) ? first.indexOf(kind) : first.size();
  }

  /** The date of day 0 of the horizon. */
  public LocalDate firstDay() {
    return firstDay;
  }

  public Optional<Delivery> delivery(int crop) {
    return deliveries.get(crop);
  }

  public int fields() {
    return fields.size();
  }

  public CropField field(int field) {
    return fields.get(field);
  }

  /** The crop's fields are numbered from here to before {@link #endField}, by name. */
  public int firstField(int crop) {
    return firstField[crop];
  }

  public int endField(int crop) {
    return firstField[crop + 1];
  }

  /**
   * Mean mass that the crop's fields bear, kg as-is: E[s] · Σ aₖ · E[yₖ], s the season factor, aₖ
   * the areas, yₖ the yields.
   *
   * <p>One factor is drawn for all fields of the crop, and each yield apart from it and from the
   * others, so the mean of each product is that of its means. What is drawn below 0 counts as 0, in
   * the means too.
   */
  public double meanCropKg(int crop) {
    return meanCropKg[crop];
  }

  public int trucks() {
    return firstTruck[firstTruck.length - 1];
  }

  /** The crop's trucks are numbered from here to before {@link #endTruck}. */
  public int firstTruck(int crop) {
    return firstTruck[crop];
  }

  public int endTruck(int crop) {
    return firstTruck[crop + 1];
  }

  public Needs load(int crop) {
    return load.get(crop);
  }

  public Needs weigh(int crop) {
    return weigh.get(crop);
  }

  public Needs unload(int crop) {
    return unload.get(crop);
  }

  /**
   * Whether the crop's balers work on that day if it is dry: a day of the receiving hours, closed
   * or not.
   */
  public boolean balerWorks(int crop, int day) {
    return receiving[crop].isWorked(day);
  }

  /** Length of the receiving hours of that day; 0 on closed days. */
  public double receivingS(int crop, int day) {
    return receiving[crop].lengthS(day);
  }

  /** Hours in which the crop's stream of loads runs. */
  public TimeWindows loadsHours(int crop) {
    return loadsHours[crop];
  }

  /** 24:00 of the last day of the crop's stream of loads; −∞ where it has none. */
  public double loadsEndS(int crop) {
    return loadsEndS[crop];
  }
}
