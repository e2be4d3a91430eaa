package org.gaugeline.assessment;

import java.util.List;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.ProfileSection;
import org.gaugeline.assembly.Seam;
import org.gaugeline.mechanics.grip.AllowableStress;
import org.gaugeline.mechanics.grip.ColletGrip;
import org.gaugeline.mechanics.grip.DrawnSideLock;
import org.gaugeline.mechanics.grip.NutThread;
import org.gaugeline.mechanics.grip.ShrinkFit;
import org.gaugeline.mechanics.grip.SideLock;
import org.gaugeline.mechanics.grip.SquareDrive;
import org.gaugeline.mechanics.spread.Quantiles;
import org.gaugeline.reference.ColletCondition;
import org.gaugeline.reference.ColletSize;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.ShankForm;
import org.gaugeline.reference.ShankSize;
import org.gaugeline.reference.Substrate;
import org.gaugeline.reference.TapSize;
import org.jspecify.annotations.Nullable;

/**
 * What a holder grips a shank with, at speed, warm, as clean as stated.
 *
 * @param frictionForceN friction between shank and holder, N: torque is that times d/2
 * @param stopTorqueNm positive stop in rotation with the friction beside it; null without a stop
 * @param stopAxialN the same along the axis, out of the holder; null without a stop
 * @param basis source key of the decisive value
 * @param seated whether it sits against a face or stop and cannot be pushed in
 */
record GripCapacity(
    Quantiles frictionForceN,
    @Nullable Quantiles stopTorqueNm,
    @Nullable Quantiles stopAxialN,
    String basis,
    boolean seated) {

  GripCapacity(
      Quantiles frictionForceN,
      @Nullable Quantiles stopTorqueNm,
      @Nullable Quantiles stopAxialN,
      String basis) {
    this(frictionForceN, stopTorqueNm, stopAxialN, basis, false);
  }

  /** Least friction force that is carried, so that a lost fit is a number and not a fault. */
  private static final double NOTHING_N = 1e-3;

  /** What holds the tool in a body. */
  static GripCapacity of(JobContext context, Body body, double insertionM, double omegaRadPerS) {
    HolderBody holder = body.holder();
    GripCapacity grip =
        of(context, holder, body.noseDiameterM(), context.gripped, insertionM, omegaRadPerS);
    for (Seam seam : holder.seams()) {
      if (seam instanceof Seam.Sleeved sleeved) {
        grip = grip.through(Models.quantiles(sleeved.gripShare()));
      }
    }
    return grip;
  }

  /** What holds the shank of an extension in its host. */
  static GripCapacity of(JobContext context, Seam.Clamped seam, double omegaRadPerS) {
    List<ProfileSection> sections = seam.host().sections();
    double nose = sections.get(sections.size() - 1).endDiameterM();
    return of(
        context,
        seam.host(),
        nose,
        context.models.extensionShank(seam.shankDiameterM()),
        seam.insertionM(),
        omegaRadPerS);
  }

  private static GripCapacity of(
      JobContext context,
      HolderBody holder,
      double noseDiameterM,
      GrippedShank shank,
      double insertionM,
      double omegaRadPerS) {
    boolean fits = holder.takes(shank.diameterM());
    GripCapacity predicted =
        !fits
            ? none(holder)
            : predicted(context, holder, noseDiameterM, shank, insertionM, omegaRadPerS);
    double marked = holder.ratings().clampingTorqueNm();
    GripCapacity held =
        Double.isNaN(marked) || !fits
            ? predicted
            : new GripCapacity(
                Quantiles.exact(2 * marked / shank.diameterM()),
                predicted.stopTorqueNm(),
                predicted.stopAxialN(),
                "given",
                predicted.seated());
    return holding(
        shank.form() == ShankForm.FORM_LOCKED ? held.locked(context.models, shank) : held,
        holder.ratings().axialHoldN());
  }

  /** A positive stop bears what is marked; where friction alone holds, a rule tells the excess. */
  private static GripCapacity holding(GripCapacity grip, double markedN) {
    return Double.isNaN(markedN) || grip.stopAxialN == null
        ? grip
        : new GripCapacity(
            grip.frictionForceN, grip.stopTorqueNm, Quantiles.exact(markedN), "given", grip.seated);
  }

  /** A shank that does not fit the bore is not held. */
  private static GripCapacity none(HolderBody holder) {
    return new GripCapacity(Quantiles.exact(NOTHING_N), null, null, holder.sourceKey());
  }

  private static GripCapacity predicted(
      JobContext context,
      HolderBody holder,
      double noseDiameterM,
      GrippedShank shank,
      double insertionM,
      double omegaRadPerS) {
    return switch (holder.family().gripModel()) {
      case SHRINK -> shrink(context, holder, noseDiameterM, shank, insertionM, omegaRadPerS);
      case PRESSURE, JAWS -> pressure(context, holder, shank, insertionM, omegaRadPerS);
      case COLLET, FLOATING_COLLET -> collet(context, holder, shank, omegaRadPerS);
      case SIDE_LOCK -> shank.hasFlat() ? sideLock(context, holder, shank, false) : none(holder);
      case INCLINED_SIDE_LOCK ->
          shank.hasFlat() ? sideLock(context, holder, shank, true) : none(holder);
      case SQUARE_DRIVE -> squareDrive(context, holder, shank, omegaRadPerS);
      case ARBOR ->
          context.arbor == null
              ? none(holder)
              : ArborGrip.of(context, holder, noseDiameterM, false);
      case DISC_ARBOR ->
          context.arbor == null ? none(holder) : ArborGrip.of(context, holder, noseDiameterM, true);
    };
  }

  /** The same grip behind a sleeve that passes on a share of the pressure. */
  private GripCapacity through(Quantiles share) {
    return new GripCapacity(frictionForceN.times(share), stopTorqueNm, stopAxialN, basis, seated);
  }

  /** The same grip with bodies that enter a groove of the shank: it cannot be pulled out. */
  private GripCapacity locked(Models models, GrippedShank shank) {
    Quantiles groove = models.lockingGrooveN(shank.diameterM());
    Quantiles axial = beside(frictionForceN, groove.p05(), groove.median(), groove.p95());
    return new GripCapacity(frictionForceN, stopTorqueNm, axial, basis, seated);
  }

  private static Quantiles friction(JobContext context, HolderBody holder) {
    double given = holder.ratings().frictionCoefficient();
    return Double.isNaN(given)
        ? context.models.shankFriction(context.job.shop().shankCondition())
        : Quantiles.exact(given);
  }

  private static GripCapacity shrink(
      JobContext context,
      HolderBody holder,
      double noseDiameterM,
      GrippedShank shank,
      double insertionM,
      double omegaRadPerS) {
    Models models = context.models;
    double d = shank.diameterM();
    ShrinkFit fit =
        new ShrinkFit(
            holder.boreM(), noseDiameterM, models.elasticSteel(), models.elastic(shank.solid()));
    double given = holder.ratings().interferenceM();
    Quantiles base = models.values().shrinkInterferenceBaseM;
    Quantiles slope = models.values().shrinkInterferenceSlope;
    double smoothing =
        models.values().roughnessSmoothingShare
            * (models.values().boreRzM + models.values().shankRzM);
    double area = Math.PI * d * insertionM;
    double low = Double.isNaN(given) ? base.p05() + slope.p05() * d : given;
    double middle = Double.isNaN(given) ? base.median() + slope.median() * d : given;
    double high = Double.isNaN(given) ? base.p95() + slope.p95() * d : given;
    Quantiles normal =
        new Quantiles(
            Math.max(NOTHING_N, area * pressurePa(fit, low - smoothing, omegaRadPerS)),
            Math.max(NOTHING_N, area * pressurePa(fit, middle - smoothing, omegaRadPerS)),
            Math.max(NOTHING_N, area * pressurePa(fit, high - smoothing, omegaRadPerS)));
    Quantiles friction = normal.times(friction(context, holder));
    boolean hss = shank.substrate() == Substrate.HSS;
    return new GripCapacity(
        hss ? friction.times(models.values().hssShrinkGripFactor) : friction,
        null,
        null,
        models.values().shrinkBasis);
  }

  private static double pressurePa(ShrinkFit fit, double interferenceM, double omegaRadPerS) {
    return fit.pressurePa(Math.max(0, interferenceM), omegaRadPerS);
  }

  private static GripCapacity pressure(
      JobContext context,
      HolderBody holder,
      GrippedShank shank,
      double insertionM,
      double omegaRadPerS) {
    double d = shank.diameterM();
    double left = holder.family().warmGripFactor() * speedFactor(context, holder, omegaRadPerS);
    Quantiles force =
        Models.quantiles(holder.family().contactPressurePa())
            .scale(Math.PI * d * insertionM * left)
            .times(friction(context, holder));
    return new GripCapacity(force, null, null, holder.family().sourceKey());
  }

  private static GripCapacity collet(
      JobContext context, HolderBody holder, GrippedShank shank, double omegaRadPerS) {
    Models models = context.models;
    ColletSize size = holder.colletSize();
    if (size == null) {
      return none(holder); // a sleeve in the place of the collet: a rule tells it
    }
    double given = holder.ratings().nutTorqueNm();
    Quantiles torque =
        Double.isNaN(given) ? Models.quantiles(size.nutTorqueNm()) : Quantiles.exact(given);
    if (Double.isNaN(given) && !context.job.shop().torqueWrench()) {
      torque = torque.times(models.values().noWrenchTorqueFactor);
    }
    boolean used = context.job.shop().colletCondition() == ColletCondition.USED;
    ColletGrip grip =
        new ColletGrip(
            NutThread.metric(
                size.nutThreadDiameterM(), size.nutThreadPitchM(), size.nutFaceDiameterM()),
            models.values().colletConeHalfAngleRad,
            models.values().nutFriction,
            models.values().coneFriction);
    double perTorque = grip.radialForceSumN(torque.median()) / torque.median();
    Quantiles normal =
        torque
            .scale(perTorque * holder.family().warmGripFactor())
            .scale(speedFactor(context, holder, omegaRadPerS))
            .scale(closingFactor(context, size, holder.colletClosesByM(shank.diameterM())));
    if (used) {
      normal = normal.times(models.values().usedColletGripFactor);
    }
    if (holder.family().id().startsWith("precision")) {
      normal = normal.times(models.values().precisionColletGripFactor);
    }
    return new GripCapacity(
        normal.times(friction(context, holder)),
        null,
        null,
        Double.isNaN(given) ? size.sourceKey() : "given");
  }

  /** A collet spends part of its force on closing itself below its nominal bore. */
  private static double closingFactor(JobContext context, ColletSize size, double closesByM) {
    double share = Math.max(0, Math.min(1, closesByM / size.collapseM()));
    return 1 - context.models.values().colletBelowNominalShare * share;
  }

  /** Screws on the flat; on a sloping flat they also draw the shank against its stop. */
  private static GripCapacity sideLock(
      JobContext context, HolderBody holder, GrippedShank gripped, boolean draws) {
    Models models = context.models;
    double d = gripped.diameterM();
    ShankSize shank = gripped.size();
    if (shank == null || shank.screwDiameterM() <= 0) {
      throw new IllegalArgumentException("no clamping flat is known for a shank of " + d + " m");
    }
    double screw = shank.screwDiameterM();
    SideLock.ClampScrew clampScrew =
        new SideLock.ClampScrew(
            screw * models.values().screwCoreRatio, screw * models.values().screwEndRatio);
    Quantiles bearing = models.values().flatBearingStressPa;
    Quantiles shear = models.values().screwShearStressPa;
    SideLock low = sideLock(d, shank, clampScrew, shear.p05(), bearing.p05());
    SideLock middle = sideLock(d, shank, clampScrew, shear.median(), bearing.median());
    SideLock high = sideLock(d, shank, clampScrew, shear.p95(), bearing.p95());
    Quantiles preload = models.values().screwPreloadStressPa;
    double screwArea = Math.PI / 4 * clampScrew.coreDiameterM() * clampScrew.coreDiameterM();
    // the screw presses the shank against the bore: friction acts on both sides of it
    Quantiles force = preload.scale(screwArea * shank.flats());
    Quantiles friction = force.scale(2).times(friction(context, holder));
    double slope = models.values().inclinedFlatSlopeRad;
    return new GripCapacity(
        friction,
        beside(friction.scale(d / 2), low.torqueNm(), middle.torqueNm(), high.torqueNm()),
        draws
            ? beside(
                friction,
                new DrawnSideLock(low, force.p05(), slope).axialForceN(),
                new DrawnSideLock(middle, force.median(), slope).axialForceN(),
                new DrawnSideLock(high, force.p95(), slope).axialForceN())
            : beside(friction, low.axialForceN(), middle.axialForceN(), high.axialForceN()),
        models.values().stopBasis,
        draws);
  }

  /**
   * The square turns the tap, the collet around its shank only keeps it from being drawn out: all
   * its friction is left for that, and none is counted beside the square.
   */
  private static GripCapacity squareDrive(
      JobContext context, HolderBody holder, GrippedShank shank, double omegaRadPerS) {
    GripCapacity collet = collet(context, holder, shank, omegaRadPerS);
    Quantiles shear = context.models.values().squareShearStressPa;
    Quantiles bearing = context.models.values().squareBearingStressPa;
    Quantiles torque =
        new Quantiles(
            square(context, shank, shear.p05(), bearing.p05()),
            square(context, shank, shear.median(), bearing.median()),
            square(context, shank, shear.p95(), bearing.p95()));
    return new GripCapacity(
        collet.frictionForceN(),
        torque,
        collet.frictionForceN(),
        context.models.values().squareBasis);
  }

  private static double square(
      JobContext context, GrippedShank shank, double shearPa, double bearingPa) {
    ReferenceData data = context.models.data();
    double d = shank.diameterM();
    double width = d * context.models.values().squarePerShank;
    double length = width * context.models.values().squareLengthPerWidth;
    for (TapSize size : data.tapSizes()) {
      if (Math.abs(size.shankDiameterM() - d) < 5e-6) {
        width = size.squareM();
        length = size.squareLengthM();
      }
    }
    return new SquareDrive(width, length, new AllowableStress(shearPa, bearingPa)).torqueNm();
  }

  /** The stop carries what friction leaves, so both add. */
  static Quantiles beside(Quantiles friction, double low, double middle, double high) {
    return new Quantiles(friction.p05() + low, friction.median() + middle, friction.p95() + high);
  }

  private static SideLock sideLock(
      double d, ShankSize shank, SideLock.ClampScrew screw, double shearPa, double bearingPa) {
    return new SideLock(
        d, shank.flatHeightM(), screw, shank.flats(), new AllowableStress(shearPa, bearingPa));
  }

  /** Grip left at speed where no closed form is known: falls with the square of the speed. */
  private static double speedFactor(JobContext context, HolderBody holder, double omegaRadPerS) {
    double share = omegaRadPerS / SpeedLimits.familyCeilingRadPerS(context, holder);
    double lost = context.models.values().gripLossAtCeiling * share * share;
    return Math.max(1e-6, 1 - lost);
  }
}
