package org.gaugeline.http;

import static org.gaugeline.http.IntentReader.orElse;

import java.util.List;
import java.util.Map;
import org.gaugeline.http.wire.WireIntent;
import org.gaugeline.job.BoredCutters;
import org.gaugeline.job.ThreadCompletion;
import org.gaugeline.quantity.SixDigits;
import org.gaugeline.quantity.UnitSuffix;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.ShankForm;
import org.gaugeline.reference.ToolKind;
import org.jspecify.annotations.Nullable;

/** Cutters that cannot be, measured by what the tables complete them with. */
final class MillFaults {
  private static final WordIndex<ToolKind> TOOLS = WordIndex.of(ToolKind.values());

  private static final WordIndex<ShankForm> FORMS = WordIndex.of(ShankForm.values());

  private final ReferenceData data;

  MillFaults(ReferenceData data) {
    this.data = data;
  }

  void find(
      WireIntent.Operation operation,
      WireIntent.Feature feature,
      WireIntent.Tool tool,
      List<Fault> faults) {
    Double diameter = tool.diameterMm();
    if (diameter == null) {
      return;
    }
    if (OperationKind.THREAD_MILLING.id().equals(operation.kind())) {
      thread(UnitSuffix.MM.toSi(diameter), si(feature.nominalSizeMm()), si(tool.pitchMm()), faults);
    }
    mass(tool, UnitSuffix.MM.toSi(diameter), faults);
  }

  /** A thread mill must go into the hole of the minor diameter, and be thicker than its profile. */
  private void thread(
      double millM, @Nullable Double nominalM, @Nullable Double given, List<Fault> faults) {
    double pitch = given == null ? ThreadCompletion.coarsePitchM(nominalM, millM, data) : given;
    double profile = ThreadCompletion.profileM(pitch);
    if (nominalM != null && millM >= nominalM - profile) {
      faults.add(
          new Fault(
              "/tool/diameterMm",
              "thread-mill-too-thick",
              "A thread mill of "
                  + mm(millM)
                  + " mm does not go into a hole of the minor diameter, "
                  + mm(nominalM - profile)
                  + " mm. Take a thinner mill, or correct nominalSizeMm or pitchMm.",
              Map.of("actual", rounded(millM), "maximum", rounded(nominalM - profile))));
    } else if (millM <= profile) {
      faults.add(
          new Fault(
              "/tool/pitchMm",
              "pitch-too-coarse",
              "A pitch of "
                  + mm(pitch)
                  + " mm leaves no core in a mill of "
                  + mm(millM)
                  + " mm. Maybe threads per inch were given.",
              Map.of("actual", rounded(pitch))));
    }
  }

  /** A body that is heavier than a full cylinder of heavy metal around it was mistyped. */
  private void mass(WireIntent.Tool tool, double diameterM, List<Fault> faults) {
    Double mass = tool.massKg();
    ToolKind kind = TOOLS.find(tool.kind());
    ShankForm form = FORMS.find(orElse(tool.shank(), WireIntent.Shank.NONE).form());
    if (mass == null || kind == null || !BoredCutters.isBored(kind, form)) {
      return;
    }
    Double body =
        tool.cutterBodyLengthMm() == null ? tool.overallLengthMm() : tool.cutterBodyLengthMm();
    double heaviest = BoredCutters.heaviestKg(kind, diameterM, si(body), data);
    if (mass > heaviest) {
      faults.add(
          new Fault(
              "/tool/massKg",
              "cutter-too-heavy",
              "massKg ("
                  + SchemaFaults.plain(mass)
                  + ") is more than a full cylinder of heavy metal of that size weighs, "
                  + SchemaFaults.plain(SixDigits.round(heaviest))
                  + " kg. Maybe grams or the mass of the whole assembly were given.",
              Map.of("actual", mass, "maximum", SixDigits.round(heaviest))));
    }
  }

  private static @Nullable Double si(@Nullable Double millimetres) {
    return millimetres == null ? null : (Double) UnitSuffix.MM.toSi(millimetres);
  }

  private static double rounded(double metres) {
    return SixDigits.round(UnitSuffix.MM.fromSi(metres));
  }

  private static String mm(double metres) {
    return SchemaFaults.plain(rounded(metres));
  }
}
