package org.gaugeline.assessment;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.job.Job;
import org.gaugeline.job.OperationCompletion;
import org.gaugeline.mechanics.balance.SeatEccentricity;
import org.gaugeline.mechanics.beam.BeamMaterial;
import org.gaugeline.mechanics.runout.RunoutEffects;
import org.gaugeline.mechanics.spread.Quantiles;
import org.gaugeline.mechanics.spread.StandardNormal;
import org.gaugeline.reference.ArborSize;
import org.gaugeline.reference.ContactMode;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.ProcessCapability;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.Spread;
import org.jspecify.annotations.Nullable;

/**
 * Everything about a job that no assembly changes, computed once per request: the cut, what is
 * asked of any assembly, and the reference values that the models need.
 */
public final class JobContext {
  final Job job;
  final Models models;
  final CutModel cut;
  final CutForces forces;

  /** Standard normal score of the asked confidence. */
  final double standardScore;

  final double allowedRunoutM;
  final double allowedSizeErrorM;
  final double safety;
  final Reach reach;
  final BeamMaterial toolMaterial;
  final GrippedShank gripped;

  /** What a screw behind the tool bears. */
  final Quantiles backStopN;

  /** Where a cutter with a bore goes; null for a shank, and for a bore that no table has. */
  final @Nullable ArborSize arbor;

  final double leastStickOutM;

  private final Map<Double, ToolFlexibility> tools = new HashMap<>();
  private @Nullable ToolFlexibility lastTool;
  private @Nullable PreparedCuts preparedCuts;
  private boolean cutsAreKnown;
  private @Nullable Appraisal lastAppraisal;
  private @Nullable Predicted lastPredicted;
  private double lastStickOutM;

  private JobContext(Job job, Models models) {
    this.job = job;
    this.models = models;
    ReferenceData data = models.data();
    this.cut = ForceLaw.cutModel(job, models);
    Job.Operation operation = job.operation();
    this.forces = cut.at(Math.max(operation.axialDepthM(), 1e-9), operation.feedPerToothM());
    this.standardScore = StandardNormal.quantile(job.preferences().confidence());
    this.allowedRunoutM = Allowances.runoutM(job, data);
    this.allowedSizeErrorM = Allowances.sizeErrorM(job, data);
    this.safety = models.safety(job.workpiece().isoGroup());
    this.reach = Reach.of(job);
    this.toolMaterial = Models.beamMaterial(job.tool().solid());
    this.gripped =
        new GrippedShank(
            job.tool().shankDiameterM(),
            job.tool().solid(),
            job.tool().substrate(),
            job.tool().shankForm(),
            models.shankSize(job.tool().shankDiameterM()));
    this.backStopN = models.backStopN(job.tool().shankDiameterM());
    this.arbor =
        job.tool().bored()
            ? data.arborOfBore(job.tool().shankDiameterM(), job.tool().diameterM())
            : null;
    this.leastStickOutM =
        Math.max(
            job.tool().neckLengthM(), Math.max(job.tool().fluteLengthM(), operation.axialDepthM()));
  }

  /** Prepares a job. */
  public static JobContext of(Job job, Models models) {
    return new JobContext(job, models);
  }

  public Job job() {
    return job;
  }

  /** Whether a steep taper gains face contact by this holder in this spindle. */
  boolean gainsFace(HolderBody holder) {
    return job.machine().contact(holder.faceContact()) == ContactMode.TAPER_AND_FACE
        && holder.spindleInterface().nativeContact() == ContactMode.TAPER_ONLY;
  }

  /** Median of a practice value. */
  public double practice(String id) {
    return models.data().practice(id);
  }

  /** What the operation usually reaches; null where the tables say nothing. */
  public @Nullable ProcessCapability capability() {
    return models.data().capabilities().get(job.operation().kind());
  }

  /** Tolerance band of the finest grade that the operation reaches, m; 0 where unknown. */
  public double bestBandM() {
    ProcessCapability known = capability();
    return known == null
        ? 0
        : models
            .data()
            .itToleranceM()
            .bandM(Math.min(job.feature().nominalSizeM(), 0.5), known.bestGrade());
  }

  /** Allowed runout at the tip, TIR, m. */
  public double allowedRunoutM() {
    return allowedRunoutM;
  }

  /** Overlap up to which two parts are said to touch, m. */
  public double touchM() {
    return 2 * Reach.TOUCH_M;
  }

  /**
   * Largest diameter at which a tilted ball cuts, D·sin(|β| + acos(1 − 2·ap/D)), up to D, m:
   * geometry of a sphere dipped to ap below its pole's level.
   */
  public double tiltedBallDiameterM() {
    double d = job.tool().diameterM();
    double dip = Math.acos(1 - 2 * Math.min(0.5, job.operation().axialDepthM() / d));
    return d * Math.sin(Math.min(Math.PI / 2, Math.abs(job.feature().tiltRad()) + dip));
  }

  /** Mean chip thickness as asked, m. */
  public double meanChipThicknessM() {
    return cut.meanChipThicknessM();
  }

  /** Largest lateral force of the cut, N. */
  public double peakRadialForceN() {
    return forces.peakRadialForceN();
  }

  /** Largest pull out of the holder, N. */
  public double pullN() {
    return forces.pullN();
  }

  /** Share of the tool life that an assembly's median runout leaves. */
  public double toolLifeFactor(Appraisal appraisal) {
    Margin runout = appraisal.margin(Pair.RUNOUT);
    return runout == null ? 1 : Prediction.lifeFactor(this, runout.demandMedian());
  }

  /** Whether friction alone may let the tool be pushed in, so that a screw must stand behind it. */
  public boolean needsBackStop(Appraisal appraisal) {
    return forces.pushN() > forces.pullN() && ForceMargins.restsOnBackStop(this, appraisal.held());
  }

  /** Whether a runout at the tip leaves a tooth of a milling cutter without a chip. */
  public boolean leavesToothIdle(double runoutTirM) {
    return !OperationCompletion.isHole(job.operation().kind())
        && RunoutEffects.leavesToothIdle(
            runoutTirM, job.tool().teeth(), job.operation().feedPerToothM());
  }

  /**
   * How much more the most loaded tooth takes with an assembly's median runout; 1 for hole tools.
   */
  public double unevenToothFactor(Appraisal appraisal) {
    Margin runout = appraisal.margin(Pair.RUNOUT);
    if (runout == null || OperationCompletion.isHole(job.operation().kind())) {
      return 1;
    }
    return RunoutEffects.peakForceFactor(
        RunoutEffects.extraChipLoadM(runout.demandMedian(), job.tool().teeth()),
        job.operation().feedPerToothM(),
        cut.kienzleExponent());
  }

  /**
   * Balance grade that the seat alone spoils at the asked speed, m/s: no balancing reaches less on
   * this interface.
   */
  public double seatGradeMPerS(Appraisal appraisal) {
    return SeatEccentricity.ofTir(
            SpeedMargins.seatTirM(this, appraisal.assembly().holder()).median())
        .velocityMPerS(job.operation().spindleSpeedRadPerS());
  }

  /** Balance grade to ask for at the asked speed, m/s; NaN where the speed needs none. */
  public double balanceGradeToAskMPerS(Appraisal appraisal) {
    return SpeedMargins.gradeToAskMPerS(this, appraisal);
  }

  /** Probabilities of an assembly's criteria. */
  public Probability probability(Appraisal appraisal) {
    double accuracy = appraisal.probability(Criterion.ACCURACY);
    double grip = appraisal.probability(Criterion.GRIP);
    double reach = appraisal.probability(Criterion.REACH);
    double speed = appraisal.probability(Criterion.SPEED);
    return new Probability(accuracy, grip, reach, speed, accuracy * grip * reach * speed);
  }

  /** An assembly's numbers as lines that can be checked by hand. */
  public List<DerivationStep> derivation(Appraisal appraisal) {
    return Derivation.of(this, appraisal);
  }

  /**
   * Speeds at which an assembly cuts deepest without chatter, deepest first; none where no such
   * limit applies or none is wanted.
   */
  public List<StabilityChart.Point> stableSpeeds(Appraisal appraisal) {
    return job.preferences().stability() ? StableSpeeds.best(this, appraisal) : List.of();
  }

  /** Whether the stable depth of assemblies is judged. */
  public boolean judgesStability() {
    return job.preferences().stability() && preparedCuts() != null;
  }

  /** The cut as stability sees it, shared by all assemblies; null where no such limit applies. */
  @Nullable PreparedCuts preparedCuts() {
    if (!cutsAreKnown) {
      preparedCuts = PreparedCuts.of(this);
      cutsAreKnown = true;
    }
    return preparedCuts;
  }

  /** Speed that neither machine nor cutter may exceed. */
  double fastestRadPerS() {
    return Math.min(job.machine().maxSpindleSpeedRadPerS(), job.tool().maxSpindleSpeedRadPerS());
  }

  /** The same, and what the assembly is good for at the asked confidence. */
  double fastestRadPerS(Appraisal appraisal) {
    return Math.min(fastestRadPerS(), appraisal.speedLimits().safeRadPerS());
  }

  /** What an assembly is predicted to do. */
  public Predicted predicted(Appraisal appraisal) {
    // Rules, cautions and the answer ask in turn.
    Predicted known = lastPredicted;
    if (known == null || appraisal != lastAppraisal) {
      known = Prediction.of(this, appraisal);
      lastPredicted = known;
      lastAppraisal = appraisal;
    }
    return known;
  }

  /** Heating that opens a shrink bore for insertion, K above room; NaN for other families. */
  public double heatingK(Appraisal appraisal) {
    return Heating.insertionRiseK(this, appraisal.body());
  }

  /** Torque that each screw of an arbor wants, N·m; NaN for other families. */
  public double arborScrewTorqueNm(Appraisal appraisal) {
    double given = appraisal.assembly().holder().ratings().nutTorqueNm();
    ArborSize size = arbor;
    return size == null || !Double.isNaN(given) ? given : size.screwTorqueNm().median();
  }

  /** The tool at a stick-out; most candidates of a job share a few. */
  ToolFlexibility tool(double stickOutM) {
    ToolFlexibility last = lastTool;
    if (last != null && stickOutM == lastStickOutM) {
      return last;
    }
    ToolFlexibility tool =
        tools.computeIfAbsent(
            stickOutM, length -> ToolFlexibility.of(job.tool(), toolMaterial, length, models));
    lastStickOutM = stickOutM;
    lastTool = tool;
    return tool;
  }

  /** The loads as they are reported. */
  public Loads loads() {
    Job.Operation operation = job.operation();
    double omega = operation.spindleSpeedRadPerS();
    List<String> basis = new ArrayList<>();
    basis.add(job.workpiece().sourceKey());
    basis.addAll(mechanicsOf(operation.kind()));
    if (!job.workpiece().ownConstants() && operation.kind() != OperationKind.TAPPING) {
      basis.add("paucksch-recalled");
      if (cut.meanChipThicknessM() < models.data().practice("calibratedFromM")) {
        basis.add("thin-chip-extrapolation");
      }
    }
    return new Loads(
        omega,
        operation.feedPerToothM() * job.tool().teeth() * omega / (2 * Math.PI),
        cut.meanChipThicknessM(),
        cut.specificForcePa(),
        cut.removalRateM3PerS(),
        forces.torqueNm(),
        forces.torqueNm() * omega,
        forces.peakTorqueNm(),
        forces.peakTangentialForceN(),
        forces.peakRadialForceN(),
        forces.pullN(),
        forces.pushN(),
        forces.feedForceN(),
        forces.wallNormalForceN(),
        forces.slipForceN(),
        List.copyOf(basis));
  }

  private static List<String> mechanicsOf(OperationKind kind) {
    return switch (kind) {
      case DRILLING, REAMING -> List.of("drilling-mechanics");
      case BORING -> List.of("boring-mechanics");
      case TAPPING -> List.of("tapping-mechanics");
      case SIDE_MILLING, SLOTTING, FACE_MILLING, HIGH_EFFICIENCY_MILLING, PROFILING ->
          List.of("milling-integration");
      case PLUNGE_MILLING -> List.of("end-cut-mechanics");
      case RAMPING -> List.of("milling-integration", "end-cut-mechanics");
      case CHAMFERING, THREAD_MILLING -> List.of("form-cut-mechanics");
    };
  }

  /** Spread of the cutting force at another feed: the chip is as many times thicker as the feed. */
  Spread forceSpreadAt(double feedPerToothM) {
    double chip = cut.meanChipThicknessM() * feedPerToothM / job.operation().feedPerToothM();
    return ForceLaw.spread(job, models.values(), chip);
  }

  /** What the job asks of any assembly. */
  public Demands demands() {
    return new Demands(
        allowedRunoutM,
        allowedSizeErrorM,
        safety * forces.peakTorqueNm(),
        forces.pullN() > 0 ? safety * forces.pullN() : forces.pushN(),
        job.feature().depthM());
  }
}
