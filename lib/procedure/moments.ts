const day = new Intl.DateTimeFormat("en-US", { dateStyle: "long", timeZone: "UTC" });

/** "November 25, 2026": the day of a moment by the clock of the record, UTC. */
export const dayOf = (moment: string): string => day.format(new Date(moment));
