package hurdline.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The numbers in a value of a plant file such as {@code {weibull: {shape: 1.5, scale: 9 h}}}. */
public final class AmountsInText {
  private static final Pattern NUMBER =
      Pattern.compile(
          "(?<![\\w.])[-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?|(?<=^x)\\d*\\.?\\d+");
  private static final Pattern LIST = Pattern.compile("\\[([^]]*)]");

  private AmountsInText() {}

  /** What a value is but for its numbers: the law and the units. */
  public static String form(String value) {
    String amounts = LIST.matcher(value).replaceAll("[]");
    return NUMBER.matcher(amounts.replaceAll("\\s+", "")).replaceAll("#");
  }

  /** Its numbers, that of a list as its mean being the first. */
  public static double[] numbers(String value) {
    List<Double> found = new ArrayList<>();
    Matcher list = LIST.matcher(value);
    if (list.find()) {
      found.add(all(list.group(1)).stream().mapToDouble(Double::doubleValue).average().orElse(0));
    }
    found.addAll(all(LIST.matcher(value).replaceAll("")));
    return found.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static List<Double> all(String text) {
    return NUMBER
        .matcher(text)
        .results()
        .map(number -> Amount.read(number.group()).number().doubleValue())
        .toList();
  }
}
