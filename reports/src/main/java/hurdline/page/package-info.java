/**
 * The report: one HTML file for the person who runs the plant, then for the one who lends the
 * money.
 *
 * <p>Read {@link hurdline.page.ReportPage} first. A page is a list of sections, one list per verb;
 * to add a part, add a section. Nothing is fetched and no script runs; styles and drawings lie
 * inside the file, it reads on a narrow screen and prints on paper. All that stands on it comes
 * from the answer, so that a record read back gives the same bytes.
 *
 * <p>May use {@code hurdline.measure}, {@code hurdline.answer}, {@code hurdline.text}, {@code
 * hurdline.table} and {@code hurdline.chart}.
 */
package hurdline.page;
