package org.gaugeline.http;

import static org.gaugeline.http.IntentReader.orElse;
import static org.gaugeline.http.IntentReader.orEmpty;

import java.util.List;
import java.util.Map;
import org.gaugeline.http.wire.WireIntent;

/** Stock entries that describe nothing, or something impossible. */
final class StockContradictions {
  private StockContradictions() {}

  static void find(List<WireIntent.StockEntry> stock, List<Fault> faults) {
    for (int i = 0; i < stock.size(); i++) {
      WireIntent.StockEntry entry = stock.get(i);
      String pointer = "/shop/stock/" + i;
      String ref = entry.ref();
      String family = entry.family();
      if (ref == null && family == null) {
        faults.add(
            new Fault(
                pointer + "/family",
                "required",
                "A stock entry needs ref, or family and what else is known of the holder.",
                Map.of("otherPointer", pointer + "/ref")));
      } else if (ref != null && family != null) {
        String detail =
            "ref and family stand in the same entry. Give ref for a holder of the catalogue, or"
                + " describe it without ref.";
        faults.add(
            Contradictions.fault(pointer + "/ref", ref, pointer + "/family", family, detail));
      }
      profile(pointer, orEmpty(entry.profile()), faults);
    }
  }

  static void profile(String pointer, List<WireIntent.ProfileSection> profile, List<Fault> faults) {
    for (int j = 0; j < profile.size(); j++) {
      section(pointer + "/profile/" + j, profile.get(j), faults);
    }
  }

  private static void section(
      String pointer, WireIntent.ProfileSection section, List<Fault> faults) {
    Double diameter = section.diameterMm();
    if (diameter == null) {
      return;
    }
    double bore = orElse(section.boreMm(), 0.0);
    double thinnest = Math.min(diameter, orElse(section.endDiameterMm(), diameter));
    if (bore >= thinnest) {
      faults.add(
          Contradictions.fault(
              pointer + "/boreMm",
              bore,
              pointer + "/diameterMm",
              thinnest,
              "boreMm ("
                  + SchemaFaults.plain(bore)
                  + ") is not smaller than the section around it ("
                  + SchemaFaults.plain(thinnest)
                  + "). Maybe radius and diameter were mixed."));
    }
  }
}
