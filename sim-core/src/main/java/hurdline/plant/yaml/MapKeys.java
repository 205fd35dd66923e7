package hurdline.plant.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The kinds of map in a plant file. Their keys stand in {@link KeyTable} under the same names.
 *
 * <p>The binder asks for nothing that is not there.
 */
enum MapKeys {
  PLANT,
  CALENDAR,
  SHIFT,
  REST,
  COMPONENT,
  CROP,
  BALE,
  FEEDER,
  PLAIN,
  CYCLONE,
  FILLER,
  PRESS,
  BIN,
  MILL,
  GRINDING,
  SCREEN,
  STOP,
  PRODUCT,
  PRODUCT_MOISTURE,
  FREIGHT,
  CLEANLINESS,
  MARKET,
  PURGE,
  ORDER,
  PICK_UPS,
  STORE,
  PACKAGE,
  LINE,
  STEP,
  FEEDER_STEP,
  MILL_STEP,
  BIN_STEP,
  BREAK,
  OUTLET,
  OWN_HOURS,
  MIX_SHARE,
  CAMPAIGN,
  SEND_HOME,
  CHANGEOVER,
  TASK,
  HANDS,
  ATTENDANCE,
  SHARED_HANDS,
  RESOURCE,
  YARD,
  YARD_PLACE,
  PLACE_MOISTURE,
  COVER,
  PLACE_LIMITS,
  STACK,
  PICK,
  LIFT,
  DELIVERY,
  FIELD,
  HOURS,
  TRUCKS,
  LOADS,
  WEATHER,
  MONTH_WEATHER,
  REJECT,
  FAILS,
  JOB,
  BASE_LOAD,
  MONEY,
  CROP_TERMS,
  ADVANCE,
  GRADE,
  OVERTIME,
  RENT,
  ELECTRICITY,
  TARIFF_PERIOD,
  RATCHET,
  ESCALATION,
  ASSETS,
  LOAN,
  TAX,
  DEPRECIATION,
  OPTION,
  PLAN,
  CHOICE,
  CHOICE_COST,
  CHOICE_RANGE,
  NORMAL,
  LOGNORMAL,
  EXPONENTIAL,
  GAMMA,
  WEIBULL,
  UNIFORM,
  TRIANGULAR,
  BETA,
  DOUBT;

  private final KeyTable.Section section = KeyTable.section(name());
  private final Map<String, Key> keys = new LinkedHashMap<>();
  private final List<String> required = new ArrayList<>();

  MapKeys() {
    for (Key key : section.keys()) {
      keys.put(key.name(), key);
      if (key.isRequired()) {
        required.add(key.name());
      }
    }
  }

  String phrase() {
    return section.phrase();
  }

  Set<String> keys() {
    return keys.keySet();
  }

  Key key(String name) {
    return keys.get(name);
  }

  List<String> required() {
    return required;
  }
}
