package org.gaugeline.http;

import java.util.List;
import org.gaugeline.reference.GripModel;

/**
 * How a grip model computes, for people.
 *
 * @param words the physics
 * @param equation what is computed, in SI
 * @param practiceIds values of the practice table that it reads
 * @param frictionIds values of the friction table that it reads
 * @param sourceKeys sources of the equation
 */
record GripEntries(
    String words,
    String equation,
    List<String> practiceIds,
    List<String> frictionIds,
    List<String> sourceKeys) {
  private static final List<String> SHANK = List.of("shank-clean", "shank-unknown", "shank-oily");

  static GripEntries of(GripModel model) {
    return switch (model) {
      case SHRINK ->
          new GripEntries(
              "A bore smaller than the shank presses on it like any press fit of thick cylinders"
                  + " (Lamé). Roughness takes part of the interference; rotation opens the bore"
                  + " and takes more. What is left grips by friction.",
              "F = µ·π·d·l·p, T = F·d/2; δ = d·p·[((D² + d²)/(D² - d²) + νo)/Eo + (1 - νi)/Ei]; δ ="
                  + " base + slope·d - s·(Rz1 + Rz2) - k·ω²",
              List.of(
                  "shrinkInterferenceBaseM",
                  "shrinkInterferenceSlope",
                  "roughnessSmoothingShare",
                  "boreRzM",
                  "shankRzM",
                  "hssShrinkGripFactor",
                  "shrinkReleaseClearanceM"),
              SHANK,
              List.of("rotating-disc-theory", "tribology-press-fit"));
      case PRESSURE, JAWS ->
          new GripEntries(
              "A sleeve or jaws press on the shank with an effective pressure that is the same"
                  + " along the gripped length. It falls when warm, and with the square of the"
                  + " speed; friction holds.",
              "F = µ·π·d·l·p·w·(1 - k·(ω/ω_c)²), T = F·d/2; w grip left when warm, ω_c the speed"
                  + " ceiling",
              List.of("gripLossAtCeiling"),
              SHANK,
              List.of("grip-practice"));
      case COLLET, FLOATING_COLLET ->
          new GripEntries(
              "The nut's torque becomes an axial force in its thread and face, and the cone turns"
                  + " that into pressure around the shank. Dirt, wear and closing below the"
                  + " nominal bore take part of it; friction holds.",
              "F = µ·N·w·(1 - k·(ω/ω_c)²), T = F·d/2; N = Fa/tan(α + ρ), Fa = M/(0.16·P + 0.58·d2·µ +"
                  + " µ·Dk/2)",
              List.of(
                  "colletConeHalfAngleRad",
                  "noWrenchTorqueFactor",
                  "usedColletGripFactor",
                  "colletBelowNominalShare",
                  "precisionColletGripFactor",
                  "gripLossAtCeiling"),
              List.of(
                  "shank-clean", "shank-unknown", "shank-oily", "nut-thread", "collet-cone-new"),
              List.of("iso-15488", "grip-memory"));
      case SIDE_LOCK, INCLINED_SIDE_LOCK ->
          new GripEntries(
              "The screw presses the shank to the bore, where friction holds on both sides; beyond"
                  + " that its tip bears on the flat and its core is sheared, which is a positive"
                  + " stop in rotation and along the axis.",
              "F = n·(2·µ·σ·A + min(τ·A, p·ds·(d - h))), T = n·(µ·σ·A·d + min(p·ds³/12, τ·A·(h -"
                  + " d/2))); n screws of core area A and end ds, h over the flat",
              List.of("screwPreloadStressPa", "screwShearStressGrade129Pa", "flatBearingStressPa"),
              SHANK,
              List.of("screw-strength-recalled", "grip-memory"));
      case ARBOR, DISC_ARBOR ->
          new GripEntries(
              "A pilot centres the cutter, a screw or nut presses it to the face, where friction"
                  + " holds; tenons, or the key of a disc cutter, carry the torque in shear and"
                  + " bearing beside it.",
              "T = µ·F·rm + n·r·l·min(τ·w, p·t); F preload, rm arm of the ring of contact, n tenons"
                  + " of width w, depth t and length l at radius r",
              List.of("tenonShearStressPa", "tenonBearingStressPa"),
              List.of("arbor-face"),
              List.of("grip-practice"));
      case SQUARE_DRIVE ->
          new GripEntries(
              "The square carries the torque, by torsion and by bearing on its flats. A collet"
                  + " around the shank only keeps the tap from being drawn out; its friction is"
                  + " not counted beside the square.",
              "T = min(0.208·τ·a³, p·a²·l/2); a across flats, l length in the socket; along the axis"
                  + " as a collet",
              List.of(
                  "squareShearStressPa",
                  "squareBearingStressPa",
                  "squarePerShank",
                  "squareLengthPerWidth"),
              SHANK,
              List.of("grip-memory"));
    };
  }
}
