package org.gaugeline.assembly;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.gaugeline.reference.InterfaceKind;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.ShankSize;
import org.gaugeline.reference.SpindleInterface;
import org.jspecify.annotations.Nullable;

/** Finds standard parts by the names under which answers list them. */
public final class StandardParts {
  private static final Pattern SIZED =
      Pattern.compile("(" + Role.FORM_LOCK.id() + "|" + Role.BACK_STOP_SCREW.id() + ")-(.+)");
  private static final Pattern MILLIMETRES = Pattern.compile("\\d{1,3}(\\.\\d{1,4})?");

  private final Map<String, StandardPart> atEnds = new LinkedHashMap<>();
  private final List<ShankSize> shanks;

  public StandardParts(ReferenceData data) {
    this.shanks = data.shankSizes();
    for (SpindleInterface end : data.interfaces().values()) {
      if (end.kind() == InterfaceKind.STEEP_TAPER) {
        put(StandardPart.knob(end, false));
        put(StandardPart.knob(end, true));
      } else if (end.kind() == InterfaceKind.HOLLOW_TAPER) {
        put(StandardPart.tube(end));
      }
    }
  }

  private void put(StandardPart part) {
    atEnds.put(part.ref(), part);
  }

  /** The part of a name, whatever diameter a sized one names; null where there is none. */
  public @Nullable StandardPart named(String ref) {
    Matcher sized = SIZED.matcher(ref);
    if (!sized.matches()) {
      return atEnds.get(ref);
    }
    String size = sized.group(2);
    double diameterM = MILLIMETRES.matcher(size).matches() ? Double.parseDouble(size) * 1e-3 : 0;
    Role role = sized.group(1).equals(Role.FORM_LOCK.id()) ? Role.FORM_LOCK : Role.BACK_STOP_SCREW;
    return diameterM > 0 ? StandardPart.behind(role, diameterM) : null;
  }

  /** Names of all of them; of the sized ones those of usual shanks. */
  public List<String> refs() {
    List<String> refs = new ArrayList<>(atEnds.keySet());
    for (ShankSize shank : shanks) {
      refs.add(StandardPart.behind(Role.FORM_LOCK, shank.diameterM()).ref());
      refs.add(StandardPart.behind(Role.BACK_STOP_SCREW, shank.diameterM()).ref());
    }
    return refs;
  }
}
