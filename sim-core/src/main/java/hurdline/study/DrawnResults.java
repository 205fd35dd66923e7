package hurdline.study;

import hurdline.plant.InputDraws;
import hurdline.study.replicate.ReplicationResults;

/**
 * The replications of a plant simulated once more, each with its row of drawn inputs.
 *
 * @param figures of the first replications, perhaps not of all
 */
public record DrawnResults(ReplicationResults figures, InputDraws draws) {}
