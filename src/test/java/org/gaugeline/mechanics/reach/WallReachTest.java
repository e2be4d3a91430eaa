package org.gaugeline.mechanics.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class WallReachTest {
  private static final RadialProfile NOSE = nose(0.008);

  private static RadialProfile nose(double radiusM) {
    return RadialProfile.startingAt(0, 0).to(0, radiusM).to(0.05, radiusM).toProfile();
  }

  /** Hand calculation: R 6, nose 8, draft 5°, clearance 0.5 mm → 28.6 mm. */
  @Test
  void draftGivesRoomToTheNose() {
    Obstacle wall = Obstacle.wall(0.006, 0, 0.080, Math.toRadians(5));
    double need = WallReach.requiredStickOutM(NOSE, wall, 0.0005);
    assertThat(need).isCloseTo(0.0286, within(5e-5));
    assertThat(WallReach.gapM(NOSE, need, wall)).isCloseTo(0.0005, within(1e-12));
  }

  /** Hand calculation: nose 13, draft 3°, clearance 1 mm needs 152.7 mm beside, 61 mm above. */
  @Test
  void slimNoseMattersMoreThanDraft() {
    double draft = Math.toRadians(3);
    assertThat(
            WallReach.requiredStickOutM(nose(0.013), Obstacle.wall(0.006, 0, 0.060, draft), 0.001))
        .isCloseTo(0.061, within(1e-12));
    assertThat(WallReach.requiredStickOutM(nose(0.013), Obstacle.wall(0.006, 0, 1, draft), 0.001))
        .isCloseTo(0.1527, within(5e-5));
  }

  @Test
  void uprightWallTakesTheFirstPartTooWide() {
    RadialProfile holder =
        RadialProfile.startingAt(0, 0.004).to(0.010, 0.004).to(0.030, 0.012).toProfile();
    Obstacle wall = Obstacle.wall(0.006, 0.0002, 0.040, 0);
    double need = WallReach.requiredStickOutM(holder, wall, 0.001);
    // The cone passes 6.2 − 1 = 5.2 mm at 10 + 20·1.2/8 = 13 mm above the nose.
    assertThat(need).isCloseTo(0.041 - 0.013, within(1e-12));
    assertThat(WallReach.requiredStickOutM(nose(0.005), wall, 0.001)).isZero();
    Obstacle endless = Obstacle.wall(0.006, 0, Double.POSITIVE_INFINITY, 0);
    assertThat(WallReach.requiredStickOutM(nose(0.005), endless, 0.001)).isZero();
    assertThat(WallReach.requiredStickOutM(NOSE, endless, 0)).isInfinite();
  }

  @Test
  void gapIsSignedAndSaysWhere() {
    RadialProfile waisted =
        RadialProfile.startingAt(0, 0.010)
            .to(0.020, 0.010)
            .to(0.020, 0.007)
            .to(0.040, 0.007)
            .to(0.060, 0.015)
            .cylinder(0.020, 0.025)
            .toProfile();
    Obstacle wall = Obstacle.wall(0.010, 0.0005, 0.070, 0);
    Gap gap =
        WallReach.smallest(
            waisted, 0, List.of(Obstacle.floor(-0.002), wall, Obstacle.step(0.020, 0.055)));
    assertThat(gap.gapM()).isCloseTo(-0.010, within(1e-12));
    assertThat(gap.zM()).isCloseTo(0.060, within(1e-12));
    assertThat(gap.radiusM()).isBetween(0.0205 - 1e-12, 0.025);
    assertThat(gap.obstacle()).isEqualTo(1);
    assertThat(WallReach.smallest(waisted, 0.030, List.of(wall)).gapM())
        .isCloseTo(0.0005, within(1e-12));
    assertThat(WallReach.gapM(waisted, 0, Obstacle.floor(-0.002))).isCloseTo(0.002, within(1e-12));
    assertThat(WallReach.gapM(waisted, 0, Obstacle.step(0.020, 0.055)))
        .isCloseTo(0.005, within(1e-12));
    assertThat(WallReach.gapM(waisted, 0, Obstacle.slot(0.021, 0.030)))
        .isCloseTo(0.0005, within(1e-12));
  }

  @Test
  void edgesAreExactAgainstFineSampling() {
    long seed = 81;
    SplittableRandom random = new SplittableRandom(seed);
    for (int run = 0; run < 300; run++) {
      RadialProfile profile = profile(random, 0);
      Obstacle wall = obstacle(random);
      double shift = random.nextDouble(0, 0.06);
      double sampled = sampledGapM(profile, shift, wall);
      assertThat(WallReach.gapM(profile, shift, wall))
          .as("seed %s run %s", seed, run)
          .isCloseTo(sampled, within(2e-5))
          .isLessThanOrEqualTo(sampled + 1e-15);
      Gap gap = WallReach.smallest(profile, shift, List.of(wall));
      assertThat(pointGapM(gap.zM(), gap.radiusM(), wall))
          .as("seed %s run %s", seed, run)
          .isCloseTo(gap.gapM(), within(1e-12));
    }
  }

  @Test
  void gapNeverFallsWithStickOutNorGrowsWithTheNose() {
    long seed = 82;
    SplittableRandom random = new SplittableRandom(seed);
    for (int run = 0; run < 500; run++) {
      long shape = random.nextLong();
      RadialProfile profile = profile(new SplittableRandom(shape), 0.002);
      RadialProfile slimmer = profile(new SplittableRandom(shape), 0);
      Obstacle wall = obstacle(random);
      double shift = random.nextDouble(0, 0.06);
      double longer = shift + random.nextDouble(0, 0.02);
      double gap = WallReach.gapM(profile, shift, wall);
      String where = "seed " + seed + " run " + run;
      assertThat(WallReach.gapM(profile, longer, wall))
          .as(where)
          .isGreaterThanOrEqualTo(gap - 1e-15)
          .isLessThanOrEqualTo(gap + (longer - shift) + 1e-15);
      assertThat(WallReach.gapM(slimmer, shift, wall))
          .as(where)
          .isGreaterThanOrEqualTo(gap - 1e-15);
    }
  }

  @Test
  void requiredStickOutIsTheShortestThatKeepsTheClearance() {
    long seed = 83;
    SplittableRandom random = new SplittableRandom(seed);
    int bound = 0;
    for (int run = 0; run < 500; run++) {
      RadialProfile holder = profile(random, 0);
      Obstacle wall = obstacle(random);
      double clearance = random.nextDouble(0, 0.002);
      double need = WallReach.requiredStickOutM(holder, wall, clearance);
      String where = "seed " + seed + " run " + run;
      assertThat(WallReach.gapM(holder, need + 1e-12, wall))
          .as(where)
          .isGreaterThanOrEqualTo(clearance - 1e-12);
      if (need > 0) {
        bound++;
        assertThat(WallReach.gapM(holder, need - 1e-7, wall)).as(where).isLessThan(clearance);
      }
    }
    assertThat(bound).isGreaterThan(200);
  }

  @Test
  void insertion() {
    MinimumInsertion shank = new MinimumInsertion(0.012, 2.5, 0.025);
    assertThat(shank.requiredM()).isCloseTo(0.030, within(1e-12));
    assertThat(shank.largestStickOutM(0.083)).isCloseTo(0.053, within(1e-12));
    assertThat(shank.spareM(0.083, 0.060)).isCloseTo(-0.007, within(1e-12));
    assertThat(new MinimumInsertion(0.006, 2.5, 0.025).requiredM()).isEqualTo(0.025);
  }

  @Test
  void rejectsDisorder() {
    assertThatThrownBy(() -> RadialProfile.startingAt(0.1, 0.01).to(0, 0.01).toProfile())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("zM is 0.0");
    assertThatThrownBy(() -> RadialProfile.startingAt(0, 0.01).to(0.1, -0.01).toProfile())
        .hasMessageContaining("radiusM is -0.01");
    assertThatThrownBy(() -> RadialProfile.startingAt(0, 0.01).toProfile())
        .hasMessageContaining("two or more points");
    assertThatThrownBy(() -> new Obstacle(0, 0, 1.6)).hasMessageContaining("draftRad is 1.6");
    assertThatThrownBy(() -> WallReach.smallest(NOSE, 0, List.of()))
        .hasMessageContaining("0 obstacles");
  }

  private static RadialProfile profile(SplittableRandom random, double thicker) {
    double z = 0;
    RadialProfile.Builder builder =
        RadialProfile.startingAt(0, random.nextDouble(0.002, 0.012) + thicker);
    for (int i = 0; i < 6; i++) {
      z += random.nextInt(3) == 0 ? 0 : random.nextDouble(0, 0.02);
      builder.to(z, random.nextDouble(0.002, 0.03) + thicker);
    }
    return builder.toProfile();
  }

  private static Obstacle obstacle(SplittableRandom random) {
    double draft = random.nextBoolean() ? 0 : random.nextDouble(0.01, 0.4);
    return new Obstacle(random.nextDouble(0.004, 0.02), random.nextDouble(0, 0.08), draft);
  }

  private static double sampledGapM(RadialProfile p, double shift, Obstacle wall) {
    double least = Double.POSITIVE_INFINITY;
    int samples = 2000;
    for (int i = 1; i < p.points(); i++) {
      for (int k = 0; k <= samples; k++) {
        double share = (double) k / samples;
        double z = p.zM(i - 1) + share * (p.zM(i) - p.zM(i - 1)) + shift;
        double r = p.radiusM(i - 1) + share * (p.radiusM(i) - p.radiusM(i - 1));
        least = Math.min(least, pointGapM(z, r, wall));
      }
    }
    return least;
  }

  private static double pointGapM(double z, double r, Obstacle wall) {
    double face = wall.distanceM() + z * Math.tan(wall.draftRad());
    return Math.max((face - r) * Math.cos(wall.draftRad()), z - wall.heightM());
  }
}
