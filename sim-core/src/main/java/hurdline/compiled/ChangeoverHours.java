package hurdline.compiled;

import java.util.OptionalInt;

/**
 * One changeover of the season, compiled.
 *
 * @param entry its place in the season's list, campaigns counted too
 * @param fromS 00:00 of its first date, or the end of a shift of the campaign before it that runs
 *     past that
 * @param toS 24:00 of its last date; equal to {@code fromS} where the horizon leaves nothing of it
 * @param before index of the campaign before it
 * @param after index of the campaign after it, if there is one
 * @param paidS hands times the length of the earliest shift of each of its dates, hand-seconds
 */
public record ChangeoverHours(
    int entry, double fromS, double toS, int before, OptionalInt after, int hands, double paidS) {}
