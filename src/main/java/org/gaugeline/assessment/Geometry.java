package org.gaugeline.assessment;

/** Where everything ends up, in SI; words as in the contract. */
public record Geometry(
    double gaugeLengthM,
    double stickOutM,
    double insertionDepthM,
    double noseDiameterM,
    double massKg,
    double momentNm) {}
