package hurdline.page;

import java.util.function.Consumer;

/**
 * A part of a report. To add one, add it to the list of its verb's sections.
 *
 * @param id its anchor on the page
 * @param isWanted whether the answer has what it shows
 * @param body writes what stands under the title
 */
record Section(String id, String title, boolean isWanted, Consumer<Html> body) {}
