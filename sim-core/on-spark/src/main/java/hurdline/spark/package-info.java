/**
 * Simulates blocks of plans on Apache Spark; the one package that knows it, in a module that is
 * built in its own profile only.
 *
 * <p>{@link hurdline.spark.SparkCluster} is found by the program where it lies on the class path.
 * {@link hurdline.spark.SparkBlocks} cuts blocks into tasks and collects what they come to; {@link
 * hurdline.spark.WorkText} is what travels: texts and numbers, from which {@link
 * hurdline.spark.TaskMachine} makes the plant again. Nothing is decided here. Read {@link
 * hurdline.spark.SparkBlocks} first.
 */
package hurdline.spark;
