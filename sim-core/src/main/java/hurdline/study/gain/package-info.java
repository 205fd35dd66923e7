/**
 * The effect of 10 % more capacity of each thing, one at a time.
 *
 * <p>A machine, a bin, a resource, a shift: each is a changed plant, simulated on the same random
 * draws as the plant as it stands. What cannot be had by the tenth, such as a loader, is one more.
 * Used by comparisons and by the sizing of a yard. Read CapacityIncreases for what is tried and
 * CapacityGains for what came of it.
 */
package hurdline.study.gain;
