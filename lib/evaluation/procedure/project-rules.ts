import { committeeRefusal } from "./rules/committee-rule";
import { lockRefusal } from "./rules/lock-rule";
import type { ChangeAttempt, Rule, RuleBreach } from "./rules/model";
import { peopleRefusal } from "./rules/people-rule";
import { procedureRefusal } from "./rules/procedure-rule";
import { rightRefusal } from "./rules/right-rule";
import { scoresheetRefusal } from "./rules/scoresheet-rule";
import { sealedPriceRefusal } from "./rules/sealed-price-rule";
import { wayRefusal } from "./rules/way-rule";

/** The rules in the order in which they are told; the first that is broken is the answer. */
const rules: readonly Rule[] = [
  wayRefusal,
  rightRefusal,
  procedureRefusal,
  lockRefusal,
  sealedPriceRefusal,
  scoresheetRefusal,
  committeeRefusal,
  peopleRefusal,
];

/**
 * What may be changed in a project, by whom and at which stage: the one list of rules that the store asks before it writes
 * anything, whether a form, an import, an undo or a request that was sent again asks for it.
 */
export const projectRules = {
  needs: ["people", "procedure", "committee", "scoresheet"],
  refusal(attempt: ChangeAttempt): RuleBreach | null {
    for (const rule of rules) {
      const breach = rule(attempt);
      if (breach !== null) return breach;
    }
    return null;
  },
} as const;
