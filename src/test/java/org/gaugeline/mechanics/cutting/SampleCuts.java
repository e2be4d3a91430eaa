package org.gaugeline.mechanics.cutting;

import java.util.SplittableRandom;

/** Cuts that several tests share, in millimetres and N/mm² as the sources print them. */
final class SampleCuts {
  static final double MM = 1e-3;
  static final double N_PER_MM2 = 1e6;
  static final double RADIAL_RATIO = 0.3;

  private SampleCuts() {}

  static SpecificForce powerLaw(double kc11, double mc, double correction) {
    return new SpecificForce(
        kc11 * N_PER_MM2, mc, correction, 0.1 * MM, new ThinChipRoute.PowerLaw());
  }

  static MillingCutter cutter(double diameterMm, int teeth, double helixDeg) {
    return cutter(diameterMm, teeth, helixDeg, new EdgeShape.Cylindrical());
  }

  static MillingCutter cutter(double diameterMm, int teeth, double helixDeg, EdgeShape edge) {
    return new MillingCutter(
        diameterMm * MM, teeth, Math.toRadians(helixDeg), edge, AxialSense.PULLS_OUT);
  }

  static MillingCut cut(
      MillingCutter cutter, MillingEngagement engagement, double feedMm, SpecificForce force) {
    return new MillingCut(cutter, engagement, feedMm * MM, force, RADIAL_RATIO, cutter.diameterM());
  }

  /** 42CrMo4 with the correction 1.2 for milling (Wikipedia "Spezifische Schnittkraft"). */
  static SpecificForce alloySteel() {
    return powerLaw(2500, 0.26, 1.2);
  }

  static MillingCut random(SplittableRandom random, EdgeShape edge) {
    double diameterMm = random.nextDouble(2, 80);
    MillingCutter cutter = cutter(diameterMm, random.nextInt(1, 9), random.nextDouble(5, 55), edge);
    double radial = random.nextDouble(0.02, 1) * cutter.diameterM();
    MillingEngagement engagement =
        switch (random.nextInt(4)) {
          case 0 -> MillingEngagement.up(radial, cutter.diameterM());
          case 1 -> MillingEngagement.down(radial, cutter.diameterM());
          case 2 -> MillingEngagement.slot();
          default -> MillingEngagement.centred(radial, cutter.diameterM());
        };
    double feedMm = random.nextDouble(0.01, 0.4);
    return cut(cutter, engagement, feedMm, force(random));
  }

  static SpecificForce force(SplittableRandom random) {
    double kc11 = random.nextDouble(400, 4000);
    double mc = random.nextDouble(0, 0.35);
    ThinChipRoute route =
        switch (random.nextInt(3)) {
          case 0 -> new ThinChipRoute.PowerLaw();
          case 1 -> new ThinChipRoute.Anchored(ThinChipRoute.HANDBOOK_FEED_EXPONENT);
          default ->
              new ThinChipRoute.Handbook(
                  random.nextDouble(0.6, 1.2) * kc11 * N_PER_MM2,
                  ThinChipRoute.HANDBOOK_FEED_EXPONENT,
                  1.1);
        };
    return new SpecificForce(kc11 * N_PER_MM2, mc, 1.2, 0.1 * MM, route);
  }
}
