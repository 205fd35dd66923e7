package hurdline.records;

/**
 * One stop of one machine as it was logged, told once.
 *
 * @param line of its file
 * @param stop the plant file's name of it, or a new one
 * @param beganS seconds since 1970
 * @param repairFromS when its repair began: later than the stop where another of the machine was
 *     being mended, or where the log says when work began
 * @param endedS NaN where it is not known
 * @param repair what is known of how long the repair took
 * @param onShift whether the machine was crewed when it began
 * @param stepS the unit of the clock by which it was told: a minute, or five where the log is in
 *     fives
 */
public record StopRecord(
    int line,
    String machine,
    String stop,
    double beganS,
    double repairFromS,
    double endedS,
    Repair repair,
    boolean onShift,
    double stepS) {

  /** Jobs that are no stops of the plant file: a screen of a mill, a full package. */
  static final String SCREEN_CHANGE = "screen_change";

  static final String PACKAGE_CHANGE = "package_change";

  /** What is known of a repair's length. */
  public enum Repair {
    WHOLE,
    /** Began and ended at the same reading of the clock. */
    BELOW_A_STEP,
    /** It had ended when the machine was next seen. */
    NO_END,
    /** Nothing: within another's, or the times cannot be. */
    NOT_KNOWN
  }

  /** Whether it is a job that the plant file has as such, and no stop. */
  public boolean isJob() {
    return isScreenChange() || isPackageChange();
  }

  public boolean isScreenChange() {
    return stop.equals(SCREEN_CHANGE);
  }

  public boolean isPackageChange() {
    return stop.equals(PACKAGE_CHANGE);
  }

  /** As records and figures call it. */
  public String key() {
    return machine + "." + stop;
  }

  StopRecord ending(double otherEndedS) {
    return new StopRecord(
        line, machine, stop, beganS, repairFromS, otherEndedS, repair, onShift, stepS);
  }

  StopRecord repairing(double fromS, Repair known) {
    return new StopRecord(line, machine, stop, beganS, fromS, endedS, known, onShift, stepS);
  }
}
