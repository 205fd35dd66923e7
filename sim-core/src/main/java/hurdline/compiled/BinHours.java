package hurdline.compiled;

import java.util.List;

/**
 * Hours of a head that draws from a bin and keeps its own.
 *
 * @param hours its shifts less their rests, and less the changeovers of its line
 * @param owned when its stretch is its own: whole days, and to the end of a shift that runs past
 *     them
 * @param shifts in order of their start
 */
public record BinHours(
    String line, String bin, TimeWindows hours, TimeWindows owned, List<PaidShift> shifts) {
  public BinHours {
    shifts = List.copyOf(shifts);
  }
}
