package org.gaugeline.http;

import static org.gaugeline.http.IntentReader.orElse;

import java.util.List;
import org.gaugeline.http.wire.WireIntent;
import org.jspecify.annotations.Nullable;

/** What cannot be true together of cutters with a bore, and of cones that leave their shape. */
final class BoreContradictions {
  private static final double SAME_CHAMFER = 0.05;

  private BoreContradictions() {}

  static void find(WireIntent.Operation operation, WireIntent.Tool tool, List<Fault> faults) {
    WireIntent.Shank shank = orElse(tool.shank(), WireIntent.Shank.NONE);
    String form = shank.form();
    boolean shellMill = "shell-mill".equals(tool.kind());
    if (shellMill && form != null && !"pilot-bore".equals(form)) {
      String detail =
          "A shell-mill has a bore, not a "
              + form
              + " shank. Give pilot-bore, or face-mill for a mill with a shank.";
      faults.add(
          Contradictions.fault("/tool/shank/form", form, "/tool/kind", "shell-mill", detail));
      faults.add(
          Contradictions.fault("/tool/kind", "shell-mill", "/tool/shank/form", form, detail));
    }
    boolean disc = "disc-cutter".equals(tool.kind());
    if (form == null ? shellMill || disc : form.equals("pilot-bore")) {
      bored(tool, shank, faults);
    }
    if ("chamfering".equals(operation.kind())) {
      chamfer(operation, tool, faults);
    }
  }

  private static void bored(WireIntent.Tool tool, WireIntent.Shank shank, List<Fault> faults) {
    atLeast(
        "/tool/shank/diameterMm",
        shank.diameterMm(),
        "/tool/diameterMm",
        tool.diameterMm(),
        "The bore leaves nothing of the cutter. Maybe the two were swapped.",
        faults);
    above(
        "/tool/fluteLengthMm",
        tool.fluteLengthMm(),
        tool.cutterBodyLengthMm(),
        "The edges cannot be longer than the body.",
        faults);
    above(
        "/tool/neckLengthMm",
        tool.neckLengthMm(),
        tool.cutterBodyLengthMm(),
        "The neck cannot end beyond the body.",
        faults);
    Double overall = tool.overallLengthMm();
    Double body = tool.cutterBodyLengthMm();
    if (overall != null && body != null && !overall.equals(body)) {
      both(
          "/tool/overallLengthMm",
          overall,
          "/tool/cutterBodyLengthMm",
          body,
          "A cutter with a bore is as long as its body. Give one of the two.",
          faults);
    }
  }

  private static void chamfer(
      WireIntent.Operation operation, WireIntent.Tool tool, List<Fault> faults) {
    Double height = operation.axialDepthMm();
    Double width = operation.radialDepthMm();
    Double point = tool.pointAngleDeg();
    Double diameter = tool.diameterMm();
    if (height != null && width != null && point != null) {
      double byCone = height * Math.tan(Math.toRadians(Math.min(point, 179.9)) / 2);
      if (Math.abs(width - byCone) > SAME_CHAMFER * byCone) {
        both(
            "/operation/radialDepthMm",
            width,
            "/tool/pointAngleDeg",
            point,
            "A cone of that angle leaves a chamfer "
                + SchemaFaults.plain(byCone)
                + " mm wide at this depth. Give two of the three.",
            faults);
      }
    }
    if (width != null && diameter != null && width > diameter / 2) {
      both(
          "/operation/radialDepthMm",
          width,
          "/tool/diameterMm",
          diameter,
          "A cone leaves a chamfer of half its diameter at most.",
          faults);
    }
  }

  private static void above(
      String pointer,
      @Nullable Double value,
      @Nullable Double bodyMm,
      String cause,
      List<Fault> faults) {
    if (value != null && bodyMm != null && value > bodyMm) {
      both(pointer, value, "/tool/cutterBodyLengthMm", bodyMm, cause, faults);
    }
  }

  private static void atLeast(
      String pointer,
      @Nullable Double value,
      String otherPointer,
      @Nullable Double other,
      String cause,
      List<Fault> faults) {
    if (value != null && other != null && value >= other) {
      both(pointer, value, otherPointer, other, cause, faults);
    }
  }

  private static void both(
      String pointer,
      Double value,
      String otherPointer,
      Double other,
      String cause,
      List<Fault> faults) {
    String detail =
        SchemaFaults.name(pointer)
            + " ("
            + SchemaFaults.plain(value)
            + ") does not go with "
            + SchemaFaults.name(otherPointer)
            + " ("
            + SchemaFaults.plain(other)
            + "). "
            + cause;
    faults.add(Contradictions.fault(pointer, value, otherPointer, other, detail));
    faults.add(Contradictions.fault(otherPointer, other, pointer, value, detail));
  }
}
