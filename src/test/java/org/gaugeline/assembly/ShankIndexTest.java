package org.gaugeline.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.tables.CatalogueTables;
import org.gaugeline.tables.ReferenceTables;
import org.junit.jupiter.api.Test;

/** The index offers the holders that asking each would offer, in the same order. */
class ShankIndexTest {
  private static final ReferenceData DATA = ReferenceTables.load();
  private static final HolderCatalogue CATALOGUE = CatalogueTables.load(DATA, null);

  @Test
  void offersWhatTakesTheShank() {
    Random random = new Random(7);
    for (List<HolderBody> holders : CATALOGUE.byInterface().values()) {
      ShankIndex index = new ShankIndex(holders);
      for (int i = 0; i < 200; i++) {
        double diameterM = diameterM(random, holders);
        List<HolderBody> each = holders.stream().filter(h -> h.takes(diameterM)).toList();

        assertThat(index.taking(diameterM)).as("shank of %s m", diameterM).isEqualTo(each);
      }
    }
  }

  /** Any diameter, or one close to a bore, where the allowance for it ends. */
  private static double diameterM(Random random, List<HolderBody> holders) {
    double bore = holders.get(random.nextInt(holders.size())).boreM();
    return random.nextBoolean()
        ? 0.05 * random.nextDouble()
        : Math.max(1e-4, bore + 5e-5 * (random.nextDouble() - 0.5));
  }
}
