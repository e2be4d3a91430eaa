package org.gaugeline.mechanics.cutting;

/**
 * Equal steps over one tooth pitch. The sum over all teeth repeats with the pitch, so one pitch of
 * tip angles stands for the revolution.
 *
 * <p>The steps are laid so that one falls exactly on the end of the arc with the thicker chip,
 * where force jumps: on the entry in down-milling, on the exit in up-milling.
 *
 * @param steps steps per pitch
 * @param stepRad length of a step, rad
 * @param startRad tip angle of step 0, at or before the entry, rad
 * @param arcSteps steps from the start to the exit, rounded up
 * @param entryAligned whether a step falls on the entry
 */
record RotationGrid(
    int steps, double stepRad, double startRad, int arcSteps, boolean entryAligned) {
  private static final int STEPS_PER_ARC = 64;
  private static final int STEPS_PER_TURN = 256;
  private static final int FEWEST_STEPS = 16;
  private static final int MOST_OF_TURN = 64;
  private static final int MAX_STEPS = 512;

  static RotationGrid over(MillingEngagement engagement, double pitchRad) {
    double arc = engagement.arcRad();
    double wanted = Math.ceil(STEPS_PER_ARC * pitchRad / arc);
    double ofTurn = STEPS_PER_TURN * pitchRad / (2 * Math.PI);
    double least = Math.max(FEWEST_STEPS, Math.min(MOST_OF_TURN, Math.rint(ofTurn)));
    int steps = (int) Math.max(least, Math.min(MAX_STEPS, wanted));
    double step = pitchRad / steps;
    int arcSteps = (int) Math.ceil(arc / step - 1e-9);
    boolean entryAligned = Math.sin(engagement.entryRad()) > Math.sin(engagement.exitRad());
    double start = entryAligned ? engagement.entryRad() : engagement.exitRad() - arcSteps * step;
    return new RotationGrid(steps, step, start, arcSteps, entryAligned);
  }

  /** Position of an angle in steps from the start. */
  double stepsAt(double angleRad) {
    return (angleRad - startRad) / stepRad;
  }
}
