package org.gaugeline.http;

import org.gaugeline.assessment.Rule;
import org.gaugeline.wording.Words;

/** One code of findings, as the catalogue tells it: the rule that finds it, and its words. */
record FindingKind(String code, Rule rule, Words.Explained explained) {}
