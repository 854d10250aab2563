import type { LanguageRule } from "./model";
import { copiedPrecision } from "./rules/copied-precision";
import { exclusive } from "./rules/exclusive";
import { localPreference } from "./rules/local-preference";
import { namedSource } from "./rules/named-source";
import { ownersNames } from "./rules/owners-names";
import { ownership } from "./rules/ownership";
import { salesWords } from "./rules/sales-words";
import { shutsOut } from "./rules/shuts-out";
import { singleLaboratory } from "./rules/single-laboratory";

/** Every rule, by family. A new rule is an entry in its family's file; a new family is a file and a line here. */
export const languageRules: readonly LanguageRule[] = [
  ...ownership,
  ...exclusive,
  ...salesWords,
  ...namedSource,
  ...ownersNames,
  ...copiedPrecision,
  ...singleLaboratory,
  ...shutsOut,
  ...localPreference,
];
