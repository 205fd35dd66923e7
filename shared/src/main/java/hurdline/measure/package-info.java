/**
 * The words of the record: every measure, machine state and cause, with its name, unit and one
 * sentence, and what a trace can say of an instant.
 *
 * <p>Read {@link hurdline.measure.Measure} first. This is the only place that spells these names:
 * the engine fills its books by it, tables and pages look them up by it, so that to add a measure
 * is one line here and one book in the engine. Names are dotted and stable; the unit is a column of
 * its own.
 *
 * <p>No values live here and nothing is computed. Enums and methods only, no public text constants:
 * the compiler would copy those across the walls. Uses nothing else of ours.
 */
package hurdline.measure;
