import { legalBases } from "../legal-basis";
import type { LanguageRule } from "../model";
import { phraseRule } from "../phrase-rule";

const firms =
  "contractor|contractors|firm|firms|bidder|bidders|installer|installers|company|companies|vendor|vendors|supplier|suppliers|business|businesses|manufacturer|manufacturers";
const place = "state|county|city|district|region|area|commonwealth|province";

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
      `local ,? ~3 ${firms}`,
      `in state ~1 ${firms}`,
      `resident ~1 ${firms}`,
      `${firms}|plant|office|headquarters|factory|warehouse ~6 located|headquartered|based|domiciled|incorporated|resident in|within this|the|our ${place}`,
      `${firms}|laborers|labourers|workers|employees|crew|crews ~4 outside|beyond this|the|our ${place}`,
      `${firms}|laborers|labourers|workers|employees|crew|crews ~4 residents|resident of this|the|our ${place}`,
      `${firms} ~1 nearest|closest|nearer|closer`,
      "nearest|closest|nearer|closer firm|bidder|contractor",
      "local labor|labour|hire|hiring|workers",
      "radius of #",
      "out of state",
      "# miles|mile|km|kilometres|kilometers of|from",
      `office|plant|headquarters|factory|warehouse|recycler|shop|yard|mill in|within this|the|our ${place}`,
      `${firms} from|within this|the|our ${place}`,
      `made|produced|manufactured|grown ~1 in this|our ${place}`,
      `come|comes|sourced|bought|produced|made|manufactured ~4 within|inside this|the|our ${place}`,
      `built|installed|completed|worked|experience|references in|within this|our ${place}`,
    ],
    unless: ["local water|power|electric|utility ~2 supplier|suppliers|company|companies"],
  }),
];
