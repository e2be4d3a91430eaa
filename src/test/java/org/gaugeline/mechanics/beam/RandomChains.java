package org.gaugeline.mechanics.beam;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Tool stacks of random shape, in the range that holders and cutters span. */
final class RandomChains {
  static final BeamMaterial STEEL = new BeamMaterial(210e9, 0.30, 7850);
  static final BeamMaterial CARBIDE = new BeamMaterial(580e9, 0.22, 14400);

  private RandomChains() {}

  static List<ChainElement> next(SplittableRandom random) {
    List<ChainElement> elements = new ArrayList<>();
    elements.add(joint(random, 5e7, 4e5));
    double d = between(random, 0.035, 0.063);
    int holder = random.nextInt(2, 5);
    for (int i = 0; i < holder; i++) {
      elements.add(holderPart(random, d));
      d *= between(random, 0.75, 1.1);
    }
    elements.add(joint(random, 2e7, 1e4));
    double shank = between(random, 0.006, 0.02);
    elements.add(BeamSegment.cylinder(between(random, 0.01, 0.05), shank, CARBIDE));
    elements.add(BeamSegment.fluted(between(random, 0.005, 0.04), shank, 0.8, 0.6, CARBIDE));
    return elements;
  }

  static BeamChain chain(List<ChainElement> elements) {
    return BeamChain.of(elements.toArray(ChainElement[]::new));
  }

  static double between(SplittableRandom random, double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private static ElasticJoint joint(SplittableRandom random, double translation, double rotation) {
    return new ElasticJoint(
        translation * between(random, 0.3, 3), rotation * between(random, 0.3, 3));
  }

  private static BeamSegment holderPart(SplittableRandom random, double d) {
    double length = between(random, 0.01, 0.05);
    BeamSegment part =
        random.nextBoolean()
            ? BeamSegment.cylinder(length, d, STEEL)
            : BeamSegment.cone(length, d, d * between(random, 0.7, 1.2), STEEL);
    double bore = d * between(random, 0.2, 0.6);
    return switch (random.nextInt(3)) {
      case 0 -> part;
      case 1 -> part.withBore(bore);
      default -> part.withCore(bore, CARBIDE);
    };
  }
}
