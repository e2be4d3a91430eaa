package org.gaugeline.assembly;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.gaugeline.reference.ColletSize;
import org.gaugeline.reference.GripModel;
import org.jspecify.annotations.Nullable;

/**
 * Puts holders, extensions, sleeves and adapters together. Depth is bounded: at most one of each,
 * and an extension is never sleeved. What can be composed on a spindle end is composed once.
 */
final class Composer {
  private static final double SAME_M = 2e-5;

  private final HolderCatalogue catalogue;
  private final Map<String, List<HolderBody>> extended = new ConcurrentHashMap<>();
  private final Map<String, List<HolderBody>> sleeved = new ConcurrentHashMap<>();
  private final Map<String, List<HolderBody>> damped = new ConcurrentHashMap<>();

  Composer(HolderCatalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** Every extension in every holder that grips its shank well, on one spindle end. */
  List<HolderBody> extended(String spindleId) {
    return extended.computeIfAbsent(
        spindleId,
        id -> {
          List<HolderBody> bodies = new ArrayList<>();
          for (HolderBody host : hosts(id)) {
            for (Extension extension : catalogue.attachments().extensions()) {
              if (grips(host, extension)) {
                bodies.add(extend(host, extension));
              }
            }
          }
          return List.copyOf(bodies);
        });
  }

  /** Every reduction sleeve in every holder with a bore for it, on one spindle end. */
  List<HolderBody> sleeved(String spindleId) {
    return sleeved.computeIfAbsent(
        spindleId,
        id -> {
          List<HolderBody> bodies = new ArrayList<>();
          for (HolderBody host : holders(id)) {
            for (Sleeve sleeve : catalogue.attachments().sleeves()) {
              if (takes(host, sleeve)) {
                bodies.add(sleeve(host, sleeve));
              }
            }
          }
          return List.copyOf(bodies);
        });
  }

  /** Every damped body of a spindle end with the shortest heads that its coupling takes. */
  List<HolderBody> damped(String spindleId) {
    return damped.computeIfAbsent(
        spindleId,
        id -> {
          List<HolderBody> bodies = new ArrayList<>();
          for (Adapter adapter : adapters(id)) {
            if (adapter.isDamped()) {
              for (HolderBody head : shortest(holders(adapter.coupling().id()))) {
                bodies.add(adapt(adapter, head));
              }
            }
          }
          return List.copyOf(bodies);
        });
  }

  /** A head of another spindle end on every plain adapter of this one. */
  List<HolderBody> adapted(String spindleId, HolderBody head) {
    List<HolderBody> bodies = new ArrayList<>();
    for (Adapter adapter : adapters(spindleId)) {
      if (!adapter.isDamped() && adapter.coupling().id().equals(head.spindleInterface().id())) {
        bodies.add(adapt(adapter, head));
      }
    }
    return bodies;
  }

  /**
   * The stack that catalogue ids joined by {@code +} name, spindle first; null where one is unknown
   * or the next does not fit on it.
   */
  @Nullable HolderBody named(String ref) {
    String[] ids = ref.split("\\+", -1);
    Adapter adapter = catalogue.attachments().adapter(ids[0]);
    int next = adapter == null ? 0 : 1;
    HolderBody body = next < ids.length ? catalogue.byRef().get(ids[next++]) : null;
    while (body != null && next < ids.length) {
      body = with(body, ids[next++]);
    }
    if (body == null || adapter == null) {
      return body;
    }
    boolean couples = adapter.coupling().id().equals(body.spindleInterface().id());
    return couples ? adapt(adapter, body) : null;
  }

  private @Nullable HolderBody with(HolderBody host, String ref) {
    Extension extension = catalogue.attachments().extension(ref);
    if (extension != null) {
      return host.seams().isEmpty() && grips(host, extension) ? extend(host, extension) : null;
    }
    Sleeve sleeve = catalogue.attachments().sleeve(ref);
    return sleeve != null && host.seams().isEmpty() && takes(host, sleeve)
        ? sleeve(host, sleeve)
        : null;
  }

  private List<HolderBody> holders(String spindleId) {
    return catalogue.byInterface().getOrDefault(spindleId, List.of());
  }

  private List<Adapter> adapters(String spindleId) {
    List<Adapter> of = new ArrayList<>();
    for (Adapter adapter : catalogue.attachments().adapters()) {
      if (adapter.spindleInterface().id().equals(spindleId)) {
        of.add(adapter);
      }
    }
    return of;
  }

  /** Holders that may grip an extension: the shop's own, and the shortest generic ones. */
  private List<HolderBody> hosts(String spindleId) {
    List<HolderBody> hosts = new ArrayList<>(shortest(holders(spindleId)));
    for (HolderBody holder : holders(spindleId)) {
      if (holder.origin() != HolderBody.Origin.GENERIC) {
        hosts.add(holder);
      }
    }
    return hosts;
  }

  /** The shortest generic body of each family and bore, face contact apart. */
  private static List<HolderBody> shortest(List<HolderBody> holders) {
    Map<String, HolderBody> best = new LinkedHashMap<>();
    for (HolderBody holder : holders) {
      if (holder.origin() == HolderBody.Origin.GENERIC) {
        ColletSize collet = holder.colletSize();
        String key =
            holder.family().id()
                + (collet == null ? holder.boreM() : collet.id())
                + holder.faceContact()
                + holder.sections().get(holder.sections().size() - 1).endDiameterM();
        best.merge(key, holder, (a, b) -> a.projectionM() <= b.projectionM() ? a : b);
      }
    }
    return List.copyOf(best.values());
  }

  /** A holder that closes on the whole length of what is put in passes that on by a sleeve. */
  private static boolean takes(HolderBody host, Sleeve sleeve) {
    return host.family().gripModel() == GripModel.PRESSURE
        && host.family().sideLoad()
        && Math.abs(host.boreM() - sleeve.outerDiameterM()) < SAME_M;
  }

  /**
   * A steel shank is not let go by a shrink bore of the same expansion, and a plain one has no flat
   * for a screw.
   */
  private static boolean grips(HolderBody host, Extension extension) {
    GripModel model = host.family().gripModel();
    boolean able =
        (model == GripModel.PRESSURE || model == GripModel.COLLET) && host.family().sideLoad();
    return able
        && host.takes(extension.shankDiameterM())
        && extension.shankLengthM() >= host.minInsertionM();
  }

  static HolderBody extend(HolderBody host, Extension extension) {
    ColletSize collet = host.colletSize();
    double deepest = collet == null ? host.maxInsertionM() : collet.colletLengthM();
    double insertion = Math.min(extension.shankLengthM(), deepest);
    List<ProfileSection> sections = new ArrayList<>(host.sections());
    sections.addAll(extension.sections());
    List<Seam> seams = new ArrayList<>(host.seams());
    PartData data = extension.data();
    seams.add(
        new Seam.Clamped(
            host.projectionM(),
            host,
            extension.shankDiameterM(),
            insertion,
            data.known().rear().orElse(host.known().front())));
    List<Part> parts = new ArrayList<>(host.components());
    parts.add(Part.of(extension));
    return new HolderBody(
        host.ref() + "+" + extension.ref(),
        originOf(host, data),
        extension.family(),
        host.spindleInterface(),
        host.faceContact(),
        extension.boreM(),
        extension.collet(),
        host.projectionM() + extension.lengthM(),
        List.copyOf(sections),
        extension.minInsertionM(),
        extension.maxInsertionM(),
        data.ratings().ofNose(),
        host.price() + extension.price(),
        host.throughCoolant() && data.throughCoolant(),
        extension.sourceKey(),
        List.copyOf(parts),
        List.copyOf(seams),
        host.damper(),
        data.known().behind(host.known()));
  }

  private static HolderBody.Origin originOf(HolderBody body, PartData data) {
    return data.own() ? HolderBody.Origin.REQUEST : body.origin();
  }

  static HolderBody sleeve(HolderBody host, Sleeve sleeve) {
    List<Seam> seams = new ArrayList<>(host.seams());
    PartData data = sleeve.data();
    seams.add(
        new Seam.Sleeved(
            host.projectionM(),
            sleeve.tirM(),
            sleeve.gripShare(),
            sleeve.outerDiameterM(),
            host.boreM(),
            data.ratings().maxSpeedRadPerS()));
    List<Part> parts = new ArrayList<>(host.components());
    parts.add(Part.of(sleeve));
    double deepest = Math.min(host.maxInsertionM(), sleeve.lengthM());
    return new HolderBody(
        host.ref() + "+" + sleeve.ref(),
        originOf(host, data),
        host.family(),
        host.spindleInterface(),
        host.faceContact(),
        sleeve.boreM(),
        null,
        host.projectionM(),
        host.sections(),
        Math.min(sleeve.leastInsertionM(), deepest),
        deepest,
        host.ratings(),
        host.price() + sleeve.price(),
        host.throughCoolant() && data.throughCoolant(),
        sleeve.sourceKey(),
        List.copyOf(parts),
        List.copyOf(seams),
        host.damper(),
        host.known().withFront(data.known().rear().orElse(host.known().front())));
  }

  static HolderBody adapt(Adapter adapter, HolderBody head) {
    List<ProfileSection> sections = new ArrayList<>(adapter.sections());
    sections.addAll(head.sections());
    List<Seam> seams = new ArrayList<>();
    PartData data = adapter.data();
    seams.add(
        new Seam.Coupled(
            adapter.projectionM(),
            adapter.coupling(),
            head.spindleInterface(),
            data.ratings().maxSpeedRadPerS(),
            head.known().rear().against(data.known().front())));
    head.seams().forEach(seam -> seams.add(seam.shifted(adapter.projectionM())));
    List<Part> parts = new ArrayList<>();
    parts.add(Part.of(adapter));
    parts.addAll(head.components());
    return new HolderBody(
        adapter.ref() + "+" + head.ref(),
        originOf(head, data),
        head.family(),
        adapter.spindleInterface(),
        adapter.faceContact(),
        head.boreM(),
        head.colletSize(),
        adapter.projectionM() + head.projectionM(),
        List.copyOf(sections),
        head.minInsertionM(),
        head.maxInsertionM(),
        head.ratings().ofNose(),
        adapter.price() + head.price(),
        head.throughCoolant() && data.throughCoolant(),
        adapter.sourceKey(),
        List.copyOf(parts),
        List.copyOf(seams),
        adapter.damper() == null
            ? Damper.shifted(head.damper(), adapter.projectionM())
            : adapter.damper(),
        head.known().behind(data.known()));
  }
}
