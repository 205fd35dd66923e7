/**
 * The sentences that a study's facts are told in.
 *
 * <p>Read {@link hurdline.text.notes.Notes} first: it knows a sentence for each kind of {@link
 * hurdline.answer.Fact}; a file for each group of facts. May use {@code hurdline.measure}, {@code
 * hurdline.answer} and {@code hurdline.text}.
 */
package hurdline.text.notes;
