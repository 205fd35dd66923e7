/**
 * What a study found, as plain records: the only thing that the engine hands to words, tables,
 * charts and the page.
 *
 * <p>Read {@link hurdline.answer.Answer} first: one sealed interface, a record per verb, a record
 * per row of each table. A new verb adds a record here and a page section in reports. Nothing
 * computes here, nothing formats, and no type of the engine appears, so that a page can be made
 * from a file read back as well as from memory.
 *
 * <p>Doubles only; NaN is "not defined". Tonnes, hours, kWh, kW; shares from 0 to 1; dates are
 * local. May use {@code hurdline.measure}.
 */
package hurdline.answer;
