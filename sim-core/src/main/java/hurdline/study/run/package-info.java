/**
 * What one plant does over its calendar: many replications, and a trace of one of them if asked
 * for.
 *
 * <p>{@link hurdline.study.run.Run} is the study, RunAccumulator gathers outcome by outcome,
 * RangeResults puts ranges of replications together, RunAnswers makes the records of the answer.
 * The day of a trace is recorded event by event. Read {@link hurdline.study.run.Run} first.
 */
package hurdline.study.run;
