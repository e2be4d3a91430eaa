package org.gaugeline.assembly;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.gaugeline.job.Intent;
import org.gaugeline.job.IntentFault;
import org.gaugeline.job.IntentFaultException;
import org.gaugeline.job.Job;
import org.gaugeline.job.StockEntry;
import org.gaugeline.reference.ClampingFamily;
import org.gaugeline.reference.GripModel;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.ToolKind;

/**
 * Composes the holders that can take the tool on this spindle, by family, and says of every other
 * family why it has none.
 */
public final class Candidates {
  private static final String NEEDS_SHRINK_UNIT = "needs-shrink-unit";

  private final ReferenceData data;
  private final HolderCatalogue catalogue;
  private final InlineBodies inlineBodies;
  private final Composer composer;
  private final Map<String, Set<String>> familiesByInterface = new HashMap<>();
  private final Map<String, ShankIndex> byShank = new HashMap<>();

  public Candidates(ReferenceData data, HolderCatalogue catalogue) {
    this.data = data;
    this.catalogue = catalogue;
    this.inlineBodies = new InlineBodies(data, catalogue);
    this.composer = new Composer(catalogue);
    catalogue
        .byInterface()
        .forEach(
            (spindle, holders) -> {
              Set<String> families = new HashSet<>();
              holders.forEach(holder -> families.add(holder.family().id()));
              familiesByInterface.put(spindle, families);
              byShank.put(spindle, new ShankIndex(holders));
            });
  }

  /**
   * Candidates of a job.
   *
   * @param byFamily family id to its candidates, in table order; only families that have any
   * @param deeper family id to what reaches deeper with more parts; worth weighing only where
   *     nothing simpler will do
   * @param absent family id to why it has none
   * @param unequipped family id to what fits but needs equipment that the shop has not got
   */
  public record Composed(
      Map<String, List<Candidate>> byFamily,
      Map<String, List<Candidate>> deeper,
      Map<String, Absence> absent,
      Map<String, List<Candidate>> unequipped) {}

  /**
   * Why a family has no candidate.
   *
   * @param code kebab code of the first obstacle
   * @param single whether taking away that obstacle alone would admit the family
   * @param nearestBoreM the bore that is nearest to the shank; NaN where that is not the obstacle
   */
  public record Absence(String code, boolean single, double nearestBoreM) {}

  /**
   * Composes a job's candidates.
   *
   * @throws IntentFaultException where too little is said of a holder in stock to estimate it
   */
  public Composed compose(Job job) {
    Map<String, Integer> owned =
        job.shop().stock().isEmpty()
            ? catalogue.countByRef()
            : new HashMap<>(catalogue.countByRef());
    List<Candidate> inline = new ArrayList<>();
    readStock(job, owned, inline);
    Map<String, List<Candidate>> byFamily = new LinkedHashMap<>();
    Map<String, Absence> absent = new LinkedHashMap<>();
    Map<String, List<Candidate>> fitting = fitting(job, owned, inline);
    Map<String, List<Candidate>> reaching = reaching(job, owned);
    Map<String, List<Candidate>> deeper = new LinkedHashMap<>();
    Map<String, List<Candidate>> unequipped = new LinkedHashMap<>();
    for (ClampingFamily family : data.families().values()) {
      List<String> barred = barred(job, family);
      List<Candidate> of = fitting.getOrDefault(family.id(), List.of());
      List<Candidate> far = reaching.getOrDefault(family.id(), List.of());
      if (barred.isEmpty() && !(of.isEmpty() && far.isEmpty())) {
        byFamily.put(family.id(), of);
        deeper.put(family.id(), far);
      } else if (barred.isEmpty()) {
        absent.put(family.id(), emptiness(job, family));
      } else {
        boolean single = barred.size() == 1 && !of.isEmpty();
        absent.put(family.id(), new Absence(barred.get(0), single, Double.NaN));
        if (single && barred.get(0).equals(NEEDS_SHRINK_UNIT)) {
          unequipped.put(family.id(), of);
        }
      }
    }
    return new Composed(byFamily, deeper, absent, unequipped);
  }

  private void readStock(Job job, Map<String, Integer> owned, List<Candidate> inline) {
    List<IntentFault> faults = new ArrayList<>();
    Map<String, HolderBody> described = inlineBodies.owned(job, faults);
    for (StockEntry entry : job.shop().stock()) {
      String ref = entry.ref();
      HolderBody own = described.get(entry.pointer());
      if (ref != null) {
        HolderBody stack = ref.indexOf('+') < 0 ? null : composer.named(ref);
        if (stack == null) {
          owned.merge(ref, entry.count(), Integer::sum);
        } else {
          inline.add(Candidate.single(stack, entry.count()));
        }
      } else if (own != null) {
        inline.add(Candidate.single(own, entry.count()));
      }
    }
    if (!faults.isEmpty()) {
      throw new IntentFaultException(faults);
    }
  }

  private List<HolderBody> taking(String spindle, double shankDiameterM) {
    ShankIndex index = byShank.get(spindle);
    return index == null ? List.of() : index.taking(shankDiameterM);
  }

  private Map<String, List<Candidate>> fitting(
      Job job, Map<String, Integer> owned, List<Candidate> inline) {
    Map<String, List<Candidate>> fitting = new LinkedHashMap<>();
    String spindle = job.machine().spindle().id();
    for (HolderBody holder : taking(spindle, job.tool().shankDiameterM())) {
      if (!usable(job, holder)) {
        continue;
      }
      int count = owned.getOrDefault(holder.ref(), 0);
      if (count > 0 || !job.shop().stockOnly()) {
        fitting
            .computeIfAbsent(holder.family().id(), id -> new ArrayList<>())
            .add(Candidate.single(holder, count));
      }
    }
    for (Candidate candidate : inline) {
      HolderBody holder = candidate.holder();
      if (holder.spindleInterface().id().equals(spindle) && usable(job, holder)) {
        fitting.computeIfAbsent(holder.family().id(), id -> new ArrayList<>()).add(candidate);
      }
    }
    addStacks(job, owned, fitting);
    return fitting;
  }

  /**
   * A sleeve where a family has no bore for the shank, an adapter under a head that the shop has.
   */
  private void addStacks(
      Job job, Map<String, Integer> owned, Map<String, List<Candidate>> fitting) {
    String spindle = job.machine().spindle().id();
    List<HolderBody> stacks = new ArrayList<>();
    for (HolderBody body : composer.sleeved(spindle)) {
      if (usable(job, body) && !fitting.containsKey(body.family().id())) {
        stacks.add(body);
      }
    }
    for (String ref : owned.keySet()) {
      HolderBody head = catalogue.byRef().get(ref);
      if (head != null && !head.spindleInterface().id().equals(spindle)) {
        stacks.addAll(composer.adapted(spindle, head));
      }
    }
    add(job, owned, stacks, fitting);
  }

  /** Extensions where the tool reaches deep, damped bodies where it reaches deeper still. */
  private Map<String, List<Candidate>> reaching(Job job, Map<String, Integer> owned) {
    Map<String, List<Candidate>> reaching = new LinkedHashMap<>();
    String spindle = job.machine().spindle().id();
    double depth = job.feature().depthM();
    for (Intent.Obstruction obstruction : job.feature().obstructions()) {
      depth = Math.max(depth, obstruction.heightM());
    }
    double d = job.tool().diameterM();
    if (depth > data.practice("extensionFromDepthPerDiameter") * d) {
      add(job, owned, composer.extended(spindle), reaching);
    }
    if (depth > data.practice("dampedFromDepthPerDiameter") * d) {
      add(job, owned, composer.damped(spindle), reaching);
    }
    return reaching;
  }

  private static void add(
      Job job,
      Map<String, Integer> owned,
      List<HolderBody> stacks,
      Map<String, List<Candidate>> byFamily) {
    for (HolderBody body : stacks) {
      if (usable(job, body) && !excluded(job, body)) {
        Candidate candidate = candidate(body, owned);
        if (candidate.owned() > 0 || !job.shop().stockOnly()) {
          byFamily.computeIfAbsent(body.family().id(), id -> new ArrayList<>()).add(candidate);
        }
      }
    }
  }

  /** Whether the shop wants nothing to do with one of the parts. */
  private static boolean excluded(Job job, HolderBody body) {
    for (Part part : body.components()) {
      if (job.shop().excludedFamilies().contains(part.familyId())) {
        return true;
      }
    }
    return false;
  }

  private static Candidate candidate(HolderBody body, Map<String, Integer> owned) {
    int sets = Integer.MAX_VALUE;
    double purchase = 0;
    for (Part part : body.components()) {
      int count = owned.getOrDefault(part.ref(), 0);
      sets = Math.min(sets, count);
      purchase += count > 0 ? 0 : part.price();
    }
    return new Candidate(body, sets, purchase);
  }

  private static boolean usable(Job job, HolderBody holder) {
    if (!holder.takes(job.tool().shankDiameterM())) {
      return false;
    }
    boolean dearFaceForNothing =
        holder.faceContact()
            && holder.spindleInterface().faceContactOffered()
            && !job.machine().faceContact()
            && holder.origin() == HolderBody.Origin.GENERIC;
    return !dearFaceForNothing;
  }

  /** What bars a family whatever bodies there are. */
  private static List<String> barred(Job job, ClampingFamily family) {
    List<String> barred = new ArrayList<>(2);
    if (job.shop().excludedFamilies().contains(family.id())) {
      barred.add("excluded-by-shop");
    }
    if (!family.shankForms().contains(job.tool().shankForm())) {
      barred.add("shank-form");
      if (job.tool().bored() || isArbor(family.gripModel())) {
        barred.add("other-cutter"); // a bore is no other form of shank, but another cutter
      }
    } else if (!carries(family.gripModel(), job.tool().kind())) {
      barred.add("other-cutter");
    }
    if (family.needsShrinkUnit() && !job.shop().shrinkUnit()) {
      barred.add(NEEDS_SHRINK_UNIT);
    }
    return barred;
  }

  private static boolean isArbor(GripModel model) {
    return model == GripModel.ARBOR || model == GripModel.DISC_ARBOR;
  }

  /** Whether that way of holding is made for that cutter: of the arbors, each has its own. */
  private static boolean carries(GripModel model, ToolKind tool) {
    return switch (model) {
      case ARBOR -> tool == ToolKind.SHELL_MILL || tool == ToolKind.FACE_MILL;
      case DISC_ARBOR -> tool == ToolKind.DISC_CUTTER || tool == ToolKind.THREAD_MILL;
      case SHRINK,
          PRESSURE,
          COLLET,
          SIDE_LOCK,
          INCLINED_SIDE_LOCK,
          SQUARE_DRIVE,
          FLOATING_COLLET,
          JAWS ->
          true;
    };
  }

  private Absence emptiness(Job job, ClampingFamily family) {
    String spindle = job.machine().spindle().id();
    if (!familiesByInterface.getOrDefault(spindle, Set.of()).contains(family.id())) {
      return new Absence("no-holder-in-catalogue", false, Double.NaN);
    }
    double wanted = job.tool().shankDiameterM();
    double nearest = Double.POSITIVE_INFINITY;
    for (HolderBody holder : catalogue.byInterface().getOrDefault(spindle, List.of())) {
      if (holder.family().id().equals(family.id())) {
        if (job.shop().stockOnly() && usable(job, holder)) {
          return new Absence("not-in-stock", true, Double.NaN);
        }
        if (Math.abs(holder.boreM() - wanted) < Math.abs(nearest - wanted)) {
          nearest = holder.boreM();
        }
      }
    }
    return new Absence("no-bore-for-shank", !job.shop().stockOnly(), nearest);
  }
}
