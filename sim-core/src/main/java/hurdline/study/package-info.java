/**
 * The questions asked of a plant: what it can do on paper and what it will do over its calendar.
 *
 * <p>Read {@link hurdline.study.run.Run} first: it simulates replications of one plant on several
 * threads and makes of their outcomes one answer that is the same however many threads there were.
 * {@link hurdline.study.RatedCapacity} asks the flow alone, without clock or chance. Both take a
 * plant by its {@link hurdline.plant.Variants} and give records of {@code hurdline.answer}; no file
 * is read or written here.
 */
package hurdline.study;
