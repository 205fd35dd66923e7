package hurdline.compiled;

/**
 * One shift of one line that starts on one day: what a crew is paid for, rests included. The same
 * shift worked for two reasons (a campaign, a bin's own hours) is the same value, so that it can be
 * paid once.
 *
 * @param shift name in the calendar
 * @param day on which it starts, counted from 0
 * @param toS its end, or the end of the horizon if that comes first
 */
public record PaidShift(String line, String shift, int day, double fromS, double toS) {}
