/**
 * Numbers and sentences as people read them.
 *
 * <p>Read {@link hurdline.text.Wording} first: it holds the unit system and the locale, and writes
 * each number with no more digits than its interval supports. {@link hurdline.text.RunHeadline} and
 * its likes say an answer in a few sentences, {@link hurdline.text.MainTable} has its main figures;
 * charts and the page use the same wording, so that a figure reads alike everywhere.
 *
 * <p>Values come in as the tables hold them (t, h, kWh, shares from 0 to 1) and go out as text. No
 * file is touched here and nothing is computed but conversions. May use {@code hurdline.measure}
 * and {@code hurdline.answer}.
 */
package hurdline.text;
