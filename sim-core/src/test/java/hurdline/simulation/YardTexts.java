package hurdline.simulation;

/**
 * Plant files for yard tests: one line that never works, and the yard and deliveries of the test.
 * March 1, 2027 is a Monday.
 */
public final class YardTexts {
  private YardTexts() {}

  /**
   * @param lastDate of March 2027 @param rest the sections {@code resources}, {@code yard} and
   *     {@code deliveries}
   */
  public static String march(int lastDate, String rest) {
    return plant("2027-03-01", "2027-03-%02d".formatted(lastDate), "[]", rest);
  }

  public static String plant(String from, String to, String closed, String rest) {
    return """
        hurdline: 1
        plant: A yard
        calendar:
          from: %s
          to: %s
          shifts: {day: {from: "06:00", to: "14:00"}}
          closed: %s
        components: [fiber, hurd]
        crops:
          stalk:
            bale: {mass: 500 kg}
            moisture: {uniform: {low: 8 %%, high: 20 %%}}
            composition: {fiber: 30 %%, hurd: 70 %%}
            composition_cv: 5 %%
          cotton:
            bale: {mass: 2000 kg}
            composition: {fiber: 100 %%}
        machines:
          feeder: {kind: bale-feeder}
        products:
          tow: {}
        lines:
          stalk_line:
            crop: stalk
            feed: feeder
            steps: {feeder: {rate: 2 t/h, to: tow}}
        season:
          - {line: stalk_line, from: %s, to: %s, shifts: [day]}
        %s
        """
        .formatted(from, to, closed, from, to, rest);
  }
}
