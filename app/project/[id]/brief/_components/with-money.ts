import type { BriefText } from "#lib/evaluation";

/** A brief from before service could start later than the base date says nothing of it. */
export const withMoney = (brief: BriefText): BriefText => ({
  ...brief,
  money: { serviceStart: "0 years", ...brief.money },
});
