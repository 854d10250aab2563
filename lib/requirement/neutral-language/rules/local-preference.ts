import { legalBases } from "../legal-basis";
import type { LanguageRule } from "../model";
import { phraseRule } from "../phrase-rule";

/** Preference by where a firm sits or has worked. Licences that the law of the place asks for are none. */
export const localPreference: readonly LanguageRule[] = [
  phraseRule({
    id: "local-firms",
    family: "local-preference",
    severity: "needs a reason",
    concern:
      "Where a firm sits says nothing of the field it builds, and preference by place may be barred by the rules of the money used.",
    basis: [legalBases.place, legalBases.equalAccess],
    offered:
      "Say what nearness is to bring and ask for that: for example an answer to a defect notice within two working days and repair within ten.",
    phrases: [
      "local ,? ~3 {firm}",
      "in state ~1 {firm}",
      "resident ~1 {firm}",
      "{firm}|{seat} ~6 {sits} in|within|inside this|the|our|same ~1 {place}",
      "{firm}|{crew} ~4 outside|beyond this|the|our {place}",
      "{firm}|{crew} ~6 residents|resident|citizens of|from|in this|the|our {place}",
      "{firm} ~1 nearest|closest|nearer|closer",
      "nearest|closest|nearer|closer firm|bidder|contractor",
      "local labor|labour|hire|hiring|workers",
      "radius of #",
      "preference|preferred|points|point|credit|advantage|bonus ~6 local|nearby|resident|residents|locally|domestic",
      "local|nearby|resident ~3 preference|preferred|points|credit|advantage",
      "locally {made}|owned|based|operated|sourced",
      "out of state",
      "# miles|mile|km|kilometres|kilometers of|from",
      "{seat} in|within|inside this|the|our ~1 {place}",
      "{firm} from|within this|the|our {place}",
      "{made} ~2 in|within|inside this|our|the same? {place}",
      "come|comes|{made}|{sold} ~4 within|inside this|the|our {place}",
      "built|installed|completed|worked|experience|references in|within this|our {place}",
    ],
    unless: ["local water|power|electric|utility ~2 supplier|suppliers|company|companies"],
  }),
];
