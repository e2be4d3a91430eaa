package org.gaugeline.mechanics.cutting;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Second opinion on the milling forces: each tooth's edge is integrated over its height with Gauss
 * quadrature between the heights at which it enters and leaves, at finely spaced instants. It
 * shares only the force law with the code under test.
 */
final class FineIntegration {
  private static final int INSTANTS = 4000;
  private static final GaussIntegratorFactory GAUSS = new GaussIntegratorFactory();

  private final MillingCut cut;
  private final double depthM;
  double peakTorqueNm;
  double meanTorqueNm;
  double peakRadialN;
  double meanFeedN;
  double peakWallN;
  double peakPullN;
  double peakPushN;

  private FineIntegration(MillingCut cut, double depthM) {
    this.cut = cut;
    this.depthM = depthM;
  }

  static FineIntegration of(MillingCut cut, double depthM, int heights) {
    FineIntegration fine = new FineIntegration(cut, depthM);
    double pitch = 2 * Math.PI / cut.cutter().teeth();
    for (int i = 0; i < INSTANTS; i++) {
      fine.take(pitch * i / INSTANTS, heights);
    }
    fine.meanTorqueNm /= INSTANTS;
    fine.meanFeedN /= INSTANTS;
    return fine;
  }

  private void take(double tip, int heights) {
    double torque = 0;
    double x = 0;
    double y = 0;
    double push = 0;
    double lagPerM = Math.tan(cut.cutter().helixRad()) / (cut.cutter().diameterM() / 2);
    double entry = cut.engagement().entryRad();
    double exit = cut.engagement().exitRad();
    for (int turn = -1; turn <= depthM * lagPerM / (2 * Math.PI) + 1; turn++) {
      for (int j = 0; j < cut.cutter().teeth(); j++) {
        double top = tip + 2 * Math.PI * ((double) j / cut.cutter().teeth() + turn);
        double low = Math.max(0, (top - exit) / lagPerM);
        double high = Math.min(depthM, (top - entry) / lagPerM);
        if (high <= low) {
          continue;
        }
        torque += edge(low, high, heights, z -> ft(z, top - z * lagPerM) * armM(z));
        x +=
            edge(
                low,
                high,
                heights,
                z ->
                    -ft(z, top - z * lagPerM)
                        * (Math.cos(top - z * lagPerM)
                            + cut.radialRatio() * sine(z) * Math.sin(top - z * lagPerM)));
        y +=
            edge(
                low,
                high,
                heights,
                z ->
                    ft(z, top - z * lagPerM)
                        * (Math.sin(top - z * lagPerM)
                            - cut.radialRatio() * sine(z) * Math.cos(top - z * lagPerM)));
        push +=
            edge(
                low,
                high,
                heights,
                z ->
                    ft(z, top - z * lagPerM)
                        * cut.radialRatio()
                        * Math.sqrt(Math.max(0, 1 - sine(z) * sine(z))));
      }
    }
    double axial = cut.cutter().axialSense().sign() * torque * lagPerM - push;
    peakTorqueNm = Math.max(peakTorqueNm, torque);
    meanTorqueNm += torque;
    meanFeedN -= x;
    if ((entry == 0 && generates(tip)) || (exit == Math.PI && generates(tip - Math.PI))) {
      peakWallN = Math.max(peakWallN, Math.abs(y));
    }
    peakRadialN = Math.max(peakRadialN, Math.hypot(x, y));
    peakPullN = Math.max(peakPullN, axial);
    peakPushN = Math.max(peakPushN, -axial);
  }

  /** Whether some point of an edge within the depth stands at the wall. */
  private boolean generates(double tipBeyondWall) {
    double pitch = 2 * Math.PI / cut.cutter().teeth();
    double lag = depthM * Math.tan(cut.cutter().helixRad()) / (cut.cutter().diameterM() / 2);
    double beyond = tipBeyondWall - Math.floor(tipBeyondWall / pitch) * pitch;
    return beyond <= lag;
  }

  /** Substitutes z = s² so that the edge's slope at the pole of a ball stays finite. */
  private static double edge(double low, double high, int points, UnivariateFunction perHeight) {
    GaussIntegrator rule = GAUSS.legendre(points, Math.sqrt(low), Math.sqrt(high));
    return rule.integrate(s -> 2 * s * perHeight.value(s * s));
  }

  private double ft(double z, double phi) {
    double chip = cut.feedPerToothM() * sine(z) * Math.max(0, Math.sin(phi));
    return cut.specificForce().forcePerWidthNPerM(chip) / sine(z);
  }

  private double sine(double z) {
    if (cut.cutter().edge() instanceof EdgeShape.Lead lead) {
      return Math.sin(lead.leadAngleRad());
    }
    double r = rounding();
    return z >= r ? 1 : Math.sqrt(r * r - (r - z) * (r - z)) / r;
  }

  private double armM(double z) {
    double r = rounding();
    double outer = cut.cutter().diameterM() / 2;
    return z >= r ? outer : outer - r + Math.sqrt(r * r - (r - z) * (r - z));
  }

  private double rounding() {
    EdgeShape edge = cut.cutter().edge();
    if (edge instanceof EdgeShape.Ball) {
      return cut.cutter().diameterM() / 2;
    }
    return edge instanceof EdgeShape.CornerRadius corner ? corner.radiusM() : 0;
  }
}
