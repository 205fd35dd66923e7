/**
 * The plant as its file describes it, in SI units: seconds, kilograms, watts, metres, joules.
 *
 * <p>Records say what is there; rules that span keys report a {@link hurdline.plant.Problem} each,
 * all in one go. Nothing here is compiled for speed and nothing runs: that is {@code
 * hurdline.compiled} and {@code hurdline.simulation}. The reader of plant files lives in {@code
 * hurdline.plant.yaml} and hands out {@link hurdline.plant.Variants}. Read {@link
 * hurdline.plant.Plant} first.
 */
package hurdline.plant;
