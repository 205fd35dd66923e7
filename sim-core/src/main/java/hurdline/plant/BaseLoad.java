package hurdline.plant;

/** Power that the building draws in its hours, whether lines run or not. */
public record BaseLoad(String name, double powerW, ClockHours hours) {
  public BaseLoad {
    Check.above0("powerW", powerW);
  }
}
