package org.gaugeline.reference;

/**
 * A standardised spindle end.
 *
 * @param id the word that requests use, such as {@code HSK-A63}
 * @param name standard and form, for people
 * @param kind standard family
 * @param standard the standard that defines it
 * @param nominalSize 30, 40, 50; 63; C6 is 63 (flange diameter); 63
 * @param gaugeDiameterM large diameter of the taper at the gauge plane
 * @param taperLengthM length of the taper (shank) behind the gauge plane
 * @param flangeDiameterM largest diameter of the holder's flange
 * @param flangeFrontM gauge plane to the front of the flange
 * @param nativeContact surfaces in contact for holder and spindle of the plain form
 * @param faceContactOffered whether a taper-and-face version of the same size exists
 * @param faceOuterDiameterM outer diameter of the contact face
 * @param faceInnerDiameterM inner diameter of the contact face
 * @param clampingForceN clamping force at the interface
 * @param faceShare share of the clamping force that reaches the face, 0 … 1 (0 for taper only)
 * @param nativeSeatTirM radial seat repeatability as TIR, plain form; p05 is unused
 * @param faceSeatTirM the same with face contact
 * @param nativeRatedSpeedRadPerS usual ceiling of the interface, plain form
 * @param faceRatedSpeedRadPerS usual ceiling with face contact
 * @param nativeRotationNmPerRad bending stiffness of the joint, plain form
 * @param faceRotationNmPerRad bending stiffness of the joint with face contact
 * @param translationNPerM radial stiffness of the joint
 * @param shankMassKg mass of the holder's shank behind the gauge plane, with its pull stud
 * @param shankCentroidM distance of that mass behind the gauge plane
 * @param seatUnbalanceKgM known unbalance of the drive slots, kg·m, 0 for symmetric forms
 * @param sourceKey source of the dimensions
 * @param limitsSourceKey source of forces, speeds and stiffness
 */
public record SpindleInterface(
    String id,
    String name,
    InterfaceKind kind,
    String standard,
    int nominalSize,
    double gaugeDiameterM,
    double taperLengthM,
    double flangeDiameterM,
    double flangeFrontM,
    ContactMode nativeContact,
    boolean faceContactOffered,
    double faceOuterDiameterM,
    double faceInnerDiameterM,
    Spread clampingForceN,
    double faceShare,
    Spread nativeSeatTirM,
    Spread faceSeatTirM,
    Spread nativeRatedSpeedRadPerS,
    Spread faceRatedSpeedRadPerS,
    Spread nativeRotationNmPerRad,
    Spread faceRotationNmPerRad,
    Spread translationNPerM,
    double shankMassKg,
    double shankCentroidM,
    double seatUnbalanceKgM,
    String sourceKey,
    String limitsSourceKey) {

  /** Surfaces in contact when a holder and a spindle of this size are combined. */
  public ContactMode contact(boolean faceContact) {
    return nativeContact == ContactMode.TAPER_ONLY && faceContact && faceContactOffered
        ? ContactMode.TAPER_AND_FACE
        : nativeContact;
  }

  /** Diameter over which its face seats something: the contact face's, else the flange's. */
  public double seatDiameterM() {
    return faceOuterDiameterM > 0 ? faceOuterDiameterM : flangeDiameterM;
  }
}
