package hurdline.table;

import com.google.gson.FieldNamingStrategy;
import hurdline.answer.AcresRow;
import hurdline.answer.BottleneckRow;
import hurdline.answer.ChangeoverRow;
import hurdline.answer.CompareAnswer;
import hurdline.answer.DifferenceRow;
import hurdline.answer.GridAnswer;
import hurdline.answer.GridBest;
import hurdline.answer.GridCell;
import hurdline.answer.GridLead;
import hurdline.answer.GridRow;
import hurdline.answer.InputUncertainty;
import hurdline.answer.MachineWeekRow;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.Selection;
import hurdline.answer.ServiceLifeRow;
import hurdline.answer.StoreLevelRow;
import hurdline.answer.SummaryRow;
import hurdline.answer.YardLevelRow;
import hurdline.answer.YardSizeRow;
import java.lang.reflect.Field;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What the parts of an answer are called in {@code record.json}: as the columns and files of the
 * tables are.
 */
final class CsvNames implements FieldNamingStrategy {
  /** Lists are called like the files of their rows. */
  private static final Map<Class<?>, String> FILES =
      Map.of(
          BottleneckRow.class, "bottlenecks",
          YardLevelRow.class, "yard_levels",
          StoreLevelRow.class, "store_levels",
          ServiceLifeRow.class, "service_lives",
          MachineWeekRow.class, "machine_weeks",
          ChangeoverRow.class, "changeovers",
          YardSizeRow.class, "yard_sizes");

  private static final Map<String, String> CALLED = new HashMap<>();

  static {
    for (Class<?> row : new Class<?>[] {ChangeoverRow.class, MachineWeekRow.class}) {
      called(row, "plan", "alternative");
    }
    for (Class<?> row :
        new Class<?>[] {GridRow.class, GridBest.class, GridLead.class, GridCell.LeftOut.class}) {
      called(row, "plant", "alternative");
    }
    called(GridAnswer.class, "plants", "alternatives");
    called(DifferenceRow.class, "optionMean", "alternative_mean");
    called(Selection.class, "option", "alternative");
    called(Selection.Row.class, "option", "alternative");
    called(InputUncertainty.Row.class, "option", "alternative");
    called(InputUncertainty.Share.class, "option", "alternative");
    called(InputUncertainty.Plants.class, "option", "alternative");
    called(SummaryRow.class, "least", "min");
    called(SummaryRow.class, "most", "max");
    called(MachineWeekRow.class, "workedT", "mass_in_t");
    called(ServiceLifeRow.class, "internalRate", "internal_rate_of_return");
    called(ServiceLifeRow.class, "otherRate", "other_internal_rate");
    called(AcresRow.class, "times", "area_factor");
    called(AcresRow.class, "chance", "chance_finished");
    called(AcresRow.class, "leftOver", "left_over_bales");
    called(YardSizeRow.class, "chance", "chance_of_overflow");
    called(YardSizeRow.class, "heldAtField", "held_at_field_bales");
    called(YardSizeRow.class, "waitingD", "truck_waiting_d");
    called(YardSizeRow.Cost.class, "perYear", "money_per_year");
    called(YardSizeRow.Cost.class, "low95", "money_low_95");
    called(YardSizeRow.Cost.class, "high95", "money_high_95");
    called(YardSizeRow.Cost.class, "ground", "ground_per_year");
    called(YardSizeRow.Cost.class, "waiting", "waiting_per_year");
    called(YardSizeRow.Cost.class, "marginBelow", "margin_below_no_limit");
    called(YardSizeRow.Cost.class, "receiving", "receiving_wages");
    called(YardSizeRow.Cost.Above.class, "money", "money_above_cheapest");
    called(YardSizeRow.Cost.Above.class, "low", "low_joint");
    called(YardSizeRow.Cost.Above.class, "high", "high_joint");
    called(CompareAnswer.Option.class, "says", "description");
    called(SeasonAnswer.Plan.class, "says", "description");
  }

  private static void called(Class<?> record, String part, String name) {
    CALLED.put(key(record, part), name);
  }

  private static String key(Class<?> record, String part) {
    return record.getName() + "." + part;
  }

  @Override
  public String translateName(Field field) {
    return name(field.getDeclaringClass(), field.getName());
  }

  static String name(Class<?> record, String part) {
    String own = CALLED.get(key(record, part));
    String file = FILES.get(rows(record, part));
    if (own != null || file != null) {
      return own == null ? file : own;
    }
    if (part.equals("option") && record.getSimpleName().endsWith("Row")) {
      return "alternative";
    }
    return withBars(part);
  }

  /** Of what a list is; the part's own type where it is none. */
  private static Class<?> rows(Class<?> record, String part) {
    return Stream.of(record.isRecord() ? record.getRecordComponents() : new RecordComponent[0])
        .filter(component -> component.getName().equals(part))
        .map(RecordComponent::getGenericType)
        .map(
            type ->
                type instanceof ParameterizedType list ? list.getActualTypeArguments()[0] : type)
        .filter(Class.class::isInstance)
        .findFirst()
        .<Class<?>>map(type -> (Class<?>) type)
        .orElse(Object.class);
  }

  /** {@code share_low_95} of {@code shareLow95}, but {@code area_m2} and {@code p05}. */
  private static String withBars(String part) {
    return part.replaceAll(
            "(?<=[a-z0-9])(?=[A-Z])|(?<=[A-Z])(?=[A-Z][a-z])|(?<=[a-z]{2})(?=[0-9])", "_")
        .toLowerCase(Locale.ROOT);
  }
}
