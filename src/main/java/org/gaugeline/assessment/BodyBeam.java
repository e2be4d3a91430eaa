package org.gaugeline.assessment;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.ProfileSection;
import org.gaugeline.assembly.Seam;
import org.gaugeline.mechanics.beam.BeamChain;
import org.gaugeline.mechanics.beam.BeamSegment;
import org.gaugeline.mechanics.beam.ElasticJoint;
import org.jspecify.annotations.Nullable;

/**
 * A stretch of a holder body as a beam for dynamics: the seams as stiff as drawn, a tuned mass left
 * out, because it hangs in rubber and is coupled on its own.
 */
final class BodyBeam {
  /** Score of seams as stiff as at the median. */
  static final double AT_MEDIAN = 0;

  private static final double SAME_PLACE_M = 1e-7;

  private BodyBeam() {}

  /**
   * The beam between two places.
   *
   * @param seamScore standard normal score of the seams' stiffness
   * @param fromM from the gauge plane, m
   * @param toM from the gauge plane, m
   */
  static BeamChain between(
      HolderBody holder, Models models, double seamScore, double fromM, double toM) {
    BeamChain.Builder builder = BeamChain.fromBase();
    double start = 0;
    for (ProfileSection section : holder.sections()) {
      double end = start + section.lengthM();
      if (start > fromM - SAME_PLACE_M && start < toM - SAME_PLACE_M) {
        for (Seam seam : holder.seams()) {
          if (Math.abs(seam.atM() - start) < SAME_PLACE_M) {
            addSeam(builder, seam, models, seamScore);
          }
        }
      }
      double low = Math.max(start, fromM);
      double high = Math.min(end, toM);
      if (high - low > SAME_PLACE_M) {
        builder.add(cut(holder, models, section, start, low, high));
      }
      start = end;
    }
    return builder.toTip();
  }

  private static BeamSegment cut(
      HolderBody holder,
      Models models,
      ProfileSection section,
      double startM,
      double lowM,
      double highM) {
    boolean filled = Body.isFilled(holder, startM + section.lengthM() / 2);
    return new BeamSegment(
        highM - lowM,
        section.diameterM(lowM - startM),
        section.diameterM(highM - startM),
        filled ? 0 : section.boreM(),
        models.beam(section.solidId()),
        0,
        models.beam(section.solidId()));
  }

  /** Adds a seam's joint. */
  static void addSeam(BeamChain.Builder builder, Seam seam, Models models, double seamScore) {
    ElasticJoint joint = joint(seam, models, seamScore);
    if (joint != null) {
      builder.add(joint);
    }
  }

  /** The seams that are joints, in the order in which the beam has them. */
  static List<Seam> joints(HolderBody holder) {
    List<Seam> joints = new ArrayList<>();
    double start = 0;
    for (ProfileSection section : holder.sections()) {
      for (Seam seam : holder.seams()) {
        if (!(seam instanceof Seam.Sleeved) && Math.abs(seam.atM() - start) < SAME_PLACE_M) {
          joints.add(seam);
        }
      }
      start += section.lengthM();
    }
    return List.copyOf(joints);
  }

  /**
   * A seam's joint; what was measured of it does not scatter. None for a sleeve: it lies inside the
   * tool joint, whose spread covers it.
   */
  static @Nullable ElasticJoint joint(Seam seam, Models models, double seamScore) {
    if (seam instanceof Seam.Clamped clamped) {
      double d = clamped.shankDiameterM();
      double factor = clamped.host().family().jointFactor();
      return new ElasticJoint(
          clamped
              .joint()
              .radialOr(
                  models.jointTranslationNPerM(d, factor)
                      * models.values().lambdaFactor(seamScore)),
          clamped
              .joint()
              .rotationalOr(
                  models.jointRotationNmPerRad(d, factor)
                      * models.values().kappaFactor(seamScore)));
    }
    if (seam instanceof Seam.Coupled coupled) {
      return new ElasticJoint(
          coupled
              .joint()
              .radialOr(
                  Models.quantiles(coupled.coupling().translationNPerM())
                      .atStandardScore(seamScore)),
          coupled
              .joint()
              .rotationalOr(
                  Models.quantiles(coupled.coupling().nativeRotationNmPerRad())
                      .atStandardScore(seamScore)));
    }
    return null;
  }
}
