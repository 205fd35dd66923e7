package hurdline.fit;

import hurdline.random.Beta;
import hurdline.random.Constant;
import hurdline.random.Distribution;
import hurdline.random.Empirical;
import hurdline.random.Exponential;
import hurdline.random.Gamma;
import hurdline.random.Lognormal;
import hurdline.random.Normal;
import hurdline.random.Triangular;
import hurdline.random.Uniform;
import hurdline.random.Weibull;
import hurdline.unit.Amount;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A distribution as a plant file has it, with four significant digits, which is far below the error
 * of any record.
 *
 * @param name of the distribution; empty for one amount
 * @param keys its values; of observed amounts one that holds them all
 */
record LawText(String name, Map<String, String> keys) {
  private static final MathContext DIGITS = new MathContext(4);

  /** More observed amounts than these are thinned to as many, evenly by rank. */
  private static final int MOST_OBSERVED = 99;

  static LawText of(Distribution distribution, ShownUnit unit) {
    Map<String, String> keys = new LinkedHashMap<>();
    String name = distribution.getClass().getSimpleName().toLowerCase(java.util.Locale.ROOT);
    if (distribution instanceof Constant constant) {
      keys.put("", unit.text(constant.mean()));
      return new LawText("", keys);
    }
    if (distribution instanceof Empirical seen) {
      keys.put("", observed(seen.values(), unit));
      return new LawText("observed", keys);
    }
    if (distribution instanceof Exponential law) {
      put(keys, unit, "mean", law.uncutMean(), law.low(), law.high());
    } else if (distribution instanceof Weibull law) {
      keys.put("shape", digits(law.shape()));
      put(keys, unit, "scale", law.scale(), law.low(), law.high());
    } else if (distribution instanceof Gamma law) {
      spread(keys, unit, law.uncutMean(), law.uncutSd(), law.low(), law.high());
    } else if (distribution instanceof Lognormal law) {
      spread(keys, unit, law.uncutMean(), law.uncutSd(), law.low(), law.high());
    } else if (distribution instanceof Normal law) {
      spread(keys, unit, law.uncutMean(), law.uncutSd(), law.low(), law.high());
    } else if (distribution instanceof Beta law) {
      spread(keys, unit, law.mean(), law.sd(), law.low(), law.high());
    } else if (distribution instanceof Triangular law) {
      keys.put("low", unit.text(law.low()));
      keys.put("mode", unit.text(law.mode()));
      keys.put("high", unit.text(law.high()));
    } else if (distribution instanceof Uniform law) {
      keys.put("low", unit.text(law.low()));
      keys.put("high", unit.text(law.high()));
    }
    return new LawText(name, keys);
  }

  private static void spread(
      Map<String, String> keys, ShownUnit unit, double mean, double sd, double low, double high) {
    keys.put("mean", unit.text(mean));
    keys.put("sd", unit.text(sd));
    bounds(keys, unit, low, high);
  }

  private static void put(
      Map<String, String> keys, ShownUnit unit, String key, double value, double low, double high) {
    keys.put(key, unit.text(value));
    bounds(keys, unit, low, high);
  }

  private static void bounds(Map<String, String> keys, ShownUnit unit, double low, double high) {
    if (low > 0) {
      keys.put("low", unit.text(low));
    }
    if (high < Double.POSITIVE_INFINITY) {
      keys.put("high", unit.text(high));
    }
  }

  private static String observed(List<Double> values, ShownUnit unit) {
    List<Double> rising = values.stream().sorted().toList();
    int n = Math.min(rising.size(), MOST_OBSERVED);
    return java.util.stream.IntStream.range(0, n)
        .mapToObj(i -> unit.text(rising.get((int) ((i + 0.5) * rising.size() / n))))
        .collect(Collectors.joining(", ", "[", "]"));
  }

  static String digits(double value) {
    return Amount.digits(BigDecimal.valueOf(value).round(DIGITS));
  }

  /** As a value of a plant file. */
  String text() {
    return name.isEmpty() ? keys.get("") : "{" + name + ": " + inner(Map.of()) + "}";
  }

  /** As a merge patch on what the file says, whose other law or keys go. */
  String patchOn(LawText said) {
    if (name.isEmpty() || said.name.isEmpty()) {
      return text();
    }
    if (!name.equals(said.name)) {
      return "{" + said.name + ": null, " + name + ": " + inner(Map.of()) + "}";
    }
    return "{" + name + ": " + inner(said.keys) + "}";
  }

  private String inner(Map<String, String> others) {
    if (keys.containsKey("")) {
      return keys.get("");
    }
    Map<String, String> all = new LinkedHashMap<>(keys);
    others.keySet().forEach(key -> all.putIfAbsent(key, "null"));
    return all.entrySet().stream()
        .map(entry -> entry.getKey() + ": " + entry.getValue())
        .collect(Collectors.joining(", ", "{", "}"));
  }
}
