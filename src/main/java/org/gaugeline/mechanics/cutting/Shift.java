package org.gaugeline.mechanics.cutting;

/**
 * A fixed offset on the grid, split once so that a loop over the steps needs only indices.
 *
 * @param pitches whole pitches
 * @param step whole steps within the pitch
 * @param fraction rest of a step, 0 to 1
 */
record Shift(double pitches, int step, double fraction) {
  static final Shift NONE = new Shift(0, 0, 0);

  static Shift by(double position, int stepsPerPitch) {
    double pitches = Math.floor(position / stepsPerPitch);
    double inPitch = position - pitches * stepsPerPitch;
    int step = Math.min((int) inPitch, stepsPerPitch - 1);
    return new Shift(pitches, step, inPitch - step);
  }
}
