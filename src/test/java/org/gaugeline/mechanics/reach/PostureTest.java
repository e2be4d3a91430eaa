package org.gaugeline.mechanics.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Tilt about the nose of the tool: hand calculations and what plane geometry must keep. */
class PostureTest {
  private static final double ENDLESS = Double.POSITIVE_INFINITY;
  private static final RadialProfile HOLDER =
      RadialProfile.startingAt(0, 0.016).to(0.060, 0.016).toProfile();

  private static Posture ball(double radiusM, double tiltRad) {
    return new Posture(0, radiusM, tiltRad);
  }

  /**
   * Hand calculation: a corner at 16 mm, 45 mm above the centre of a ball of 3 mm, keeps 1 mm from
   * an endless wall at β = atan(16/45) − asin(2/√(45² + 16²)) = 17.2°.
   */
  @Test
  void cornerNeedsItsTilt() {
    double tilt = Math.atan2(16, 45) - Math.asin(2 / Math.hypot(45, 16));
    assertThat(Math.toDegrees(tilt)).isCloseTo(17.2, within(0.05));
    Obstacle wall = Obstacle.wall(0.003, 0, ENDLESS, 0);
    assertThat(ball(0.003, tilt).gapM(HOLDER, 0.048, wall)).isCloseTo(0.001, within(1e-12));
    assertThat(ball(0.003, tilt - 1e-3).gapM(HOLDER, 0.048, wall)).isLessThan(0.001);
  }

  /** Hand calculation: the rear corner comes down to b + s·cos β − r·sin β above the tip. */
  @Test
  void farCornerComesDownToTheFloor() {
    double expected = 0.003 + 0.045 * Math.sqrt(3) / 2 - 0.016 / 2;
    assertThat(ball(0.003, Math.PI / 6).gapM(HOLDER, 0.048, Obstacle.floor(0)))
        .isCloseTo(expected, within(1e-12));
  }

  /** A wall that leans away by α gives what a tilt by α gives beside an upright one. */
  @Test
  void draftActsLikeTilt() {
    double lean = Math.toRadians(7);
    double touching = 0.003 * Math.tan(Math.PI / 4 - lean / 2);
    Obstacle leaning = new Obstacle(touching, ENDLESS, lean);
    double drafted = ball(0.003, 0).gapM(HOLDER, 0.048, leaning);
    double tilted = ball(0.003, lean).gapM(HOLDER, 0.048, Obstacle.wall(0.003, 0, ENDLESS, 0));
    assertThat(drafted).isCloseTo(tilted, within(1e-12));
  }

  /** The top edge of a step meets the face between two corners that both clear it. */
  @Test
  void faceBetweenTheCornersCounts() {
    RadialProfile wide = RadialProfile.startingAt(0, 0.030).to(0.020, 0.030).toProfile();
    double tilt = Math.toRadians(20);
    double s = 0.045;
    // where the face stands over the step's edge at 5 mm, and how high its near corner is
    double along = (0.005 + s * Math.sin(tilt)) / Math.cos(tilt);
    double face = 0.003 + s * Math.cos(tilt) + along * Math.sin(tilt);
    double corner = 0.003 + s * Math.cos(tilt) + 0.030 * Math.sin(tilt);
    assertThat(corner).isGreaterThan(face + 0.001);
    assertThat(ball(0.003, tilt).gapM(wide, 0.048, Obstacle.step(0.005, face + 0.001)))
        .isNegative();
    assertThat(ball(0.003, tilt).gapM(wide, 0.048, Obstacle.step(0.005, face - 0.001)))
        .isPositive();
  }

  @Test
  void uprightIsThePlainGap() {
    long seed = 91;
    SplittableRandom random = new SplittableRandom(seed);
    for (int run = 0; run < 300; run++) {
      RadialProfile profile = profile(random);
      Obstacle wall = obstacle(random);
      double shift = random.nextDouble(0, 0.06);
      double radius = random.nextDouble(0.001, 0.01);
      Posture upright = new Posture(random.nextDouble(0, 0.005), radius, 0);
      assertThat(upright.gapM(profile, shift, wall))
          .as("seed %s run %s", seed, run)
          .isCloseTo(WallReach.gapM(profile, shift, wall), within(1e-12));
    }
  }

  /**
   * No more than the ball's own radius counts at the wall: beyond it the point is past the axis.
   */
  @Test
  void tiltNeverLosesAtTheNearWall() {
    long seed = 92;
    SplittableRandom random = new SplittableRandom(seed);
    int gained = 0;
    for (int run = 0; run < 500; run++) {
      RadialProfile profile = profile(random);
      double radius = random.nextDouble(0.001, 0.01);
      double shift = radius + random.nextDouble(0.005, 0.06);
      Obstacle wall = Obstacle.wall(radius, 0, random.nextDouble(0, 0.15), 0);
      double tilt = random.nextDouble(0, 1.2);
      double before = Math.min(radius, ball(radius, tilt).gapM(profile, shift, wall));
      double after = Math.min(radius, ball(radius, tilt + 0.05).gapM(profile, shift, wall));
      assertThat(after).as("seed %s run %s", seed, run).isGreaterThanOrEqualTo(before - 1e-12);
      gained += after > before ? 1 : 0;
    }
    assertThat(gained).isGreaterThan(50);
  }

  @Test
  void tiltAlwaysLosesAtAnEndlessFarWallAndAtTheFloor() {
    long seed = 93;
    SplittableRandom random = new SplittableRandom(seed);
    for (int run = 0; run < 500; run++) {
      RadialProfile profile = profile(random);
      double radius = random.nextDouble(0.001, 0.01);
      double shift = radius + random.nextDouble(0.031, 0.06);
      Obstacle wall = new Obstacle(random.nextDouble(radius, 0.1), ENDLESS, 0);
      // up to where the point that decides has come level with the ball's centre
      double tilt = random.nextDouble(0, 0.7);
      Posture less = ball(radius, tilt);
      Posture more = ball(radius, tilt + 0.05);
      String where = "seed " + seed + " run " + run;
      assertThat(more.mirrored().gapM(profile, shift, wall))
          .as(where)
          .isLessThan(less.mirrored().gapM(profile, shift, wall));
      Obstacle floor = Obstacle.floor(0);
      assertThat(more.gapM(profile, shift, floor))
          .as(where)
          .isLessThan(less.gapM(profile, shift, floor));
    }
  }

  @Test
  void bothSidesAreAlike() {
    long seed = 94;
    SplittableRandom random = new SplittableRandom(seed);
    for (int run = 0; run < 300; run++) {
      RadialProfile profile = profile(random);
      Obstacle wall = obstacle(random);
      double shift = random.nextDouble(0, 0.06);
      Posture posture =
          new Posture(
              random.nextDouble(0, 0.005),
              random.nextDouble(0.001, 0.01),
              random.nextDouble(-1, 1));
      String where = "seed " + seed + " run " + run;
      assertThat(posture.mirrored().mirrored()).as(where).isEqualTo(posture);
      Obstacle floor = Obstacle.floor(random.nextDouble(-0.01, 0.01));
      assertThat(posture.mirrored().gapM(profile, shift, floor))
          .as(where)
          .isCloseTo(posture.gapM(profile, shift, floor), within(1e-12));
      Posture centred = ball(posture.pivotHeightM(), posture.tiltRad());
      Posture leaning = ball(posture.pivotHeightM(), -posture.tiltRad());
      assertThat(centred.mirrored().gapM(profile, shift, wall))
          .as(where)
          .isEqualTo(leaning.gapM(profile, shift, wall));
    }
  }

  /** A wall that leans more and still touches the ball never comes nearer above its centre. */
  @Test
  void moreDraftNeverHurts() {
    long seed = 95;
    SplittableRandom random = new SplittableRandom(seed);
    for (int run = 0; run < 500; run++) {
      RadialProfile profile = profile(random);
      double radius = random.nextDouble(0.001, 0.01);
      double shift = radius + random.nextDouble(0, 0.06);
      double height = random.nextDouble(0, 0.15);
      double draft = random.nextDouble(0, 0.6);
      Posture posture = ball(radius, random.nextDouble(0, 0.6));
      double steep = Math.min(radius, posture.gapM(profile, shift, leaning(radius, height, draft)));
      double gentle = posture.gapM(profile, shift, leaning(radius, height, draft + 0.05));
      assertThat(Math.min(radius, gentle))
          .as("seed %s run %s", seed, run)
          .isGreaterThanOrEqualTo(steep - 1e-12);
    }
  }

  @Test
  void rejectsMoreThanLyingDown() {
    assertThatThrownBy(() -> ball(0.003, 1.6))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("tiltRad is 1.6");
  }

  private static Obstacle leaning(double radiusM, double heightM, double draftRad) {
    double touching = radiusM * Math.tan(Math.PI / 4 - draftRad / 2);
    return new Obstacle(touching, heightM, draftRad);
  }

  private static RadialProfile profile(SplittableRandom random) {
    double z = 0;
    RadialProfile.Builder builder = RadialProfile.startingAt(0, random.nextDouble(0.002, 0.012));
    for (int i = 0; i < 6; i++) {
      z += random.nextInt(3) == 0 ? 0 : random.nextDouble(0, 0.02);
      builder.to(z, random.nextDouble(0.002, 0.03));
    }
    return builder.toProfile();
  }

  private static Obstacle obstacle(SplittableRandom random) {
    double draft = random.nextBoolean() ? 0 : random.nextDouble(0.01, 0.4);
    return new Obstacle(random.nextDouble(0.004, 0.02), random.nextDouble(0, 0.08), draft);
  }
}
