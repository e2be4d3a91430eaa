package org.gaugeline.assessment;

import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.ProfileSection;
import org.gaugeline.mechanics.beam.BeamChain;
import org.gaugeline.mechanics.beam.BeamMaterial;
import org.gaugeline.mechanics.beam.BeamSegment;
import org.gaugeline.mechanics.beam.TipCompliance;
import org.gaugeline.mechanics.reach.RadialProfile;

/**
 * A holder body with everything that no request can change, computed once: mass, flexibility at its
 * front face, outline from its nose.
 *
 * <p>The part of the bore that grips is taken as filled (shank or collet bends with the body), with
 * the body's own material: the shank's is known only with the job and changes little.
 *
 * @param frontMassKg mass before the gauge plane
 * @param rotaryKgM2 no less than the rotary inertia ∫ρI dx of that mass
 * @param massKg mass with the part behind the gauge plane
 * @param centroidM centre of that mass before the gauge plane, m (negative: behind)
 * @param frontFlexibilityMPerN deflection of the front face by a force there
 * @param frontCouplingRadPerN rotation of the front face by a force there
 * @param frontRotationRadPerNm rotation of the front face by a moment there
 * @param fromNose outline measured from the nose towards the spindle
 */
public record Body(
    HolderBody holder,
    double frontMassKg,
    double rotaryKgM2,
    double massKg,
    double centroidM,
    double frontFlexibilityMPerN,
    double frontCouplingRadPerN,
    double frontRotationRadPerNm,
    double noseDiameterM,
    double largestDiameterM,
    RadialProfile fromNose) {

  public static Body prepare(HolderBody holder, BeamMaterial steel) {
    BeamChain chain = chain(holder, steel);
    double shank = holder.spindleInterface().shankMassKg();
    double modelled = chain.massKg() + shank;
    double weighed = holder.ratings().massKg();
    double centroid =
        (chain.massKg() * chain.centroidM() - shank * holder.spindleInterface().shankCentroidM())
            / modelled;
    double largest = 0;
    for (ProfileSection section : holder.sections()) {
      largest = Math.max(largest, Math.max(section.startDiameterM(), section.endDiameterM()));
    }
    ProfileSection nose = holder.sections().get(holder.sections().size() - 1);
    return new Body(
        holder,
        chain.massKg(),
        chain.massKg() * largest * largest / 8,
        Double.isNaN(weighed) ? modelled : weighed,
        centroid,
        TipCompliance.of(chain),
        TipCompliance.rotationRadPerN(chain),
        TipCompliance.rotationRadPerNm(chain),
        nose.endDiameterM(),
        largest,
        outline(holder));
  }

  private static BeamChain chain(HolderBody holder, BeamMaterial steel) {
    BeamChain.Builder builder = BeamChain.fromBase();
    addTo(builder, holder, steel);
    return builder.toTip();
  }

  /** Adds the body's segments, gauge plane first, to a chain that is being built. */
  static void addTo(BeamChain.Builder builder, HolderBody holder, BeamMaterial steel) {
    double fromGauge = 0;
    double filledFrom = holder.projectionM() - holder.maxInsertionM();
    for (ProfileSection section : holder.sections()) {
      double middle = fromGauge + section.lengthM() / 2;
      double bore = middle > filledFrom ? 0 : section.boreM();
      builder.add(
          new BeamSegment(
              section.lengthM(),
              section.startDiameterM(),
              section.endDiameterM(),
              bore,
              steel,
              0,
              steel));
      fromGauge += section.lengthM();
    }
  }

  private static RadialProfile outline(HolderBody holder) {
    int last = holder.sections().size() - 1;
    ProfileSection nose = holder.sections().get(last);
    RadialProfile.Builder outline = RadialProfile.startingAt(0, nose.endDiameterM() / 2);
    double z = 0;
    for (int i = last; i >= 0; i--) {
      ProfileSection section = holder.sections().get(i);
      outline.to(z, section.endDiameterM() / 2);
      z += section.lengthM();
      outline.to(z, section.startDiameterM() / 2);
    }
    return outline.toProfile();
  }
}
