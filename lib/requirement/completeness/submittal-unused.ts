import type { CompletenessRule } from "./model";

export const submittalUnused: CompletenessRule = {
  id: "submittal-unused",
  title: "Submittal that nothing uses",
  advice: "Take it out, or name the clause that it shows. Paper that nobody reads costs every bidder time.",
  find: ({ requirements, submittals }) => {
    const written = new Set(requirements.filter(({ isOn }) => isOn).map(({ id }) => id));
    return submittals
      .filter(({ usedBy }) => !usedBy.some((id) => written.has(id)))
      .map(({ id, item }) => ({
        requirements: [],
        submittal: id,
        sentence: `“${item}” is asked for, and no clause uses it.`,
      }));
  },
};
