/**
 * Chance: distributions of amounts, and streams of random numbers to draw them with.
 *
 * <p>A {@link hurdline.random.Distribution} says what is drawn and knows no stream; {@link
 * hurdline.random.RandomStreams} hands out one {@link hurdline.random.RandomStream} per seed,
 * replication and source of chance; {@link hurdline.random.Draws} brings the two together and is
 * what a replication calls. One number of a stream is one amount, by inverse transform, so that a
 * change in one source never moves another.
 *
 * <p>Read {@link hurdline.random.Distribution} first. Amounts carry the unit of whatever is drawn.
 * Nothing here knows a machine, a bale or a clock. The generator and the gamma and beta curves come
 * from Apache Commons.
 */
package hurdline.random;
