package org.gaugeline.assembly;

import static org.gaugeline.assembly.OwnDetails.orElse;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.gaugeline.job.IntentFault;
import org.gaugeline.job.Job;
import org.gaugeline.job.StockEntry;
import org.gaugeline.job.StockEntry.InlineHolder;
import org.gaugeline.reference.ArborSize;
import org.gaugeline.reference.GripModel;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.SpindleInterface;
import org.jspecify.annotations.Nullable;

/**
 * Turns a holder in the caller's own words into a body: what is given is taken, what is left out
 * comes from the generic body of the same family, spindle end and bore that is nearest in length.
 */
final class InlineBodies {
  /** How the names of bodies in the caller's own words begin. */
  static final String OWN = "own-";

  private static final double SAME_M = 2e-5;

  private final ReferenceData data;
  private final HolderCatalogue catalogue;

  InlineBodies(ReferenceData data, HolderCatalogue catalogue) {
    this.data = data;
    this.catalogue = catalogue;
  }

  /**
   * What the shop owns in the caller's own words, each under a name of its own.
   *
   * @return by the pointer of the entry, in the order of the stock
   */
  Map<String, HolderBody> owned(Job job, List<IntentFault> faults) {
    Map<String, HolderBody> owned = new LinkedHashMap<>();
    Map<String, Integer> alike = new HashMap<>();
    for (StockEntry entry : job.shop().stock()) {
      InlineHolder described = entry.inline();
      if (described != null) {
        body(described, entry.pointer(), job, faults)
            .ifPresent(
                body -> {
                  int count = alike.merge(body.ref(), 1, Integer::sum);
                  String apart = count == 1 ? body.ref() : body.ref() + "-no" + count;
                  owned.put(entry.pointer(), body.named(apart));
                });
      }
    }
    return owned;
  }

  private Optional<HolderBody> body(
      InlineHolder given, String pointer, Job job, List<IntentFault> faults) {
    String familyId = Objects.requireNonNull(given.family(), "the edge wants ref or family");
    String spindle = given.interfaceId();
    String interfaceId = spindle == null ? job.machine().spindle().id() : spindle;
    Double bore = given.boreM();
    double boreM = bore == null ? job.tool().shankDiameterM() : bore;
    HolderBody template = template(familyId, interfaceId, boreM, given.projectionM(), "");
    if (template == null || !template.takes(boreM)) {
      faults.add(
          new IntentFault(
              pointer,
              "holder-not-estimable",
              Map.of("family", familyId, "interface", interfaceId, "boreM", boreM)));
      return Optional.empty();
    }
    HolderBody built = merge(given, template, template.boreM());
    if (!holdsMass(given, built)) {
      faults.add(new IntentFault(pointer + "/damper", "no-room-for-mass", Map.of()));
    }
    thinNose(built, pointer, faults);
    return Optional.of(built);
  }

  /**
   * The generic body that comes nearest: with the collet that was named, then one that takes the
   * bore, then by length; the shortest where none was said.
   */
  @Nullable HolderBody template(
      String familyId,
      String interfaceId,
      double boreM,
      @Nullable Double projectionM,
      String colletId) {
    HolderBody best = null;
    double least = Double.POSITIVE_INFINITY;
    for (HolderBody holder : catalogue.byInterface().getOrDefault(interfaceId, List.of())) {
      if (!holder.family().id().equals(familyId)) {
        continue;
      }
      boolean otherCollet =
          holder.colletSize() != null
              && !colletId.isEmpty()
              && !holder.colletSize().id().equals(colletId);
      double off = holder.takes(boreM) ? 0 : 1 + Math.abs(holder.boreM() - boreM);
      double length =
          projectionM == null
              ? holder.projectionM() * 1e-3
              : Math.abs(holder.projectionM() - projectionM);
      double distance = (otherCollet ? 10 : 0) + off + length;
      if (distance < least) {
        least = distance;
        best = holder;
      }
    }
    return best;
  }

  /** A body in one piece with what is known better of it. */
  HolderBody merge(InlineHolder given, HolderBody template, double boreM) {
    double projectionM = OwnDetails.lengthM(given, template.projectionM());
    List<ProfileSection> sections =
        OwnDetails.sections(given, template.sections(), template.projectionM(), projectionM, data);
    if (given.profile().isEmpty() && Math.abs(boreM - template.boreM()) > SAME_M) {
      sections = OwnDetails.walled(sections, template.boreM(), boreM);
    }
    double inserted = Math.min(template.maxInsertionM(), projectionM);
    boolean faceContact =
        given.faceContact() == null ? template.faceContact() : given.faceContact();
    HolderBody body =
        new HolderBody(
            String.format(
                Locale.ROOT,
                OWN + "%s-%.4g-p%.4g",
                template.family().id(),
                boreM * 1e3,
                projectionM * 1e3),
            HolderBody.Origin.REQUEST,
            template.family(),
            template.spindleInterface(),
            faceContact,
            boreM,
            template.colletSize(),
            projectionM,
            sections,
            Math.min(template.minInsertionM(), inserted),
            inserted,
            template.ratings(),
            orElse(given.price(), template.price()),
            orElse(given.throughCoolant(), template.throughCoolant()),
            given.profile().isEmpty() ? template.sourceKey() : "given");
    body =
        body.knowing(
            OwnDetails.ratings(given),
            template.known().with(known(given, body)),
            body.throughCoolant(),
            body.price());
    double free = projectionM - inserted;
    MassRoom room = given.tested().damper() == null ? null : MassRoom.in(sections, free, data);
    return room == null || !MassRoom.holds(room, given)
        ? body
        : body.damped(room.damper(given, room.usualKg()), room.hollowed(sections));
  }

  /** A bore without a wall around it holds nothing; a collet or a pilot needs none. */
  static void thinNose(HolderBody body, String pointer, List<IntentFault> faults) {
    double nose = body.sections().get(body.sections().size() - 1).endDiameterM();
    boolean bored = body.colletSize() == null && !seatsCutter(body);
    if (bored && nose <= body.boreM()) {
      faults.add(
          new IntentFault(
              pointer + "/profile",
              "nose-thinner-than-bore",
              Map.of("noseDiameterM", nose, "boreM", body.boreM())));
    }
  }

  /** Whether the body has room for the tuned mass that was told of, if any was. */
  static boolean holdsMass(InlineHolder given, HolderBody body) {
    return given.tested().damper() == null || body.damper() != null;
  }

  /**
   * Joints and damping. The face of an arbor is in front, where the cutter sits; any other holder
   * sits with its flange.
   */
  private Known known(InlineHolder given, HolderBody body) {
    Joint rear = OwnDetails.joint(given);
    Joint front = Joint.UNMEASURED;
    if (seatsCutter(body)) {
      front = OwnDetails.withFace(front, given, faceDiameterM(body));
    } else if (body.faceContact()) {
      rear = OwnDetails.withFace(rear, given, faceDiameterM(body));
    }
    return new Known(rear, front, OwnDetails.dampingRatio(given), null);
  }

  private static boolean seatsCutter(HolderBody body) {
    GripModel model = body.family().gripModel();
    return model == GripModel.ARBOR || model == GripModel.DISC_ARBOR;
  }

  /** Whether a face of it was measured that means something here. */
  static boolean hasFace(HolderBody body) {
    return seatsCutter(body) || body.faceContact();
  }

  /** Diameter of the face by which a body is judged. */
  double faceDiameterM(HolderBody body) {
    SpindleInterface end = body.spindleInterface();
    if (!seatsCutter(body)) {
      return end.seatDiameterM();
    }
    for (ArborSize arbor : data.arborSizes()) {
      if (Math.abs(arbor.boreM() - body.boreM()) < SAME_M) {
        return arbor.faceDiameterM();
      }
    }
    return body.sections().get(body.sections().size() - 1).endDiameterM();
  }
}
