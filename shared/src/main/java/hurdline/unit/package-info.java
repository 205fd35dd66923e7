/**
 * Quantities at the edge: text with a unit comes in, a double in SI goes on.
 *
 * <p>A table of exact factors in place of a units library: the format has thirty units, half of its
 * quantities count shares, bales or money, which such libraries do not know, and decimal arithmetic
 * rounds once where chained converters round at each step. A mass per time and a price are
 * different dimensions here because a file asks for one or the other, not because physics says so.
 *
 * <p>Read {@link hurdline.unit.Amount} first, the one grammar of numbers; {@link
 * hurdline.unit.Dimension} lists what can be asked for. Uses nothing else of the project.
 */
package hurdline.unit;
