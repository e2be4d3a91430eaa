package org.gaugeline.mechanics.beam;

/** What a chain is made of. */
public sealed interface ChainElement permits BeamSegment, ElasticJoint {}
