import { describe, expect, test } from "vitest";
import {
  judgingAlready,
  library,
  libraryHeadings,
  limitStandings,
  profileEntries,
  profiles,
  ratingMeasure,
  withEntry,
  withProfile,
} from "#lib/criteria";
import { claimedMeasures, measures, requirementsSchema, startingProject } from "#lib/evaluation";
import { plainDate } from "#lib/quantity";
import { fiveCriteria } from "./five-criteria";

const { requirements } = startingProject({ name: "Field", owner: "Owner", baseDate: plainDate("2027-06-01") });
const empty = { criteria: [], headings: [] };
const problemsOf = (result: object) =>
  (requirementsSchema.safeParse({ ...requirements, ...result, weighing: { kind: "direct" } }).error?.issues ?? []).map(
    ({ path, message }) => `${path.join(".")}: ${message}`,
  );

describe("the library", () => {
  test.each(library.map((entry) => [entry.id, entry] as const))("has a criterion that reads: %s", (_, entry) => {
    expect(problemsOf(withEntry(empty, entry).result)).toEqual([]);
    expect(measures.some(({ id }) => id === entry.criterion.measure)).toBe(true);
  });

  test("says of every criterion why, how, what to ask for and where its limits come from", () => {
    for (const { criterion, method, asked, limits } of library) {
      for (const text of [criterion.reason, criterion.source, method, asked]) expect(text).toMatch(/^.{10,}\.$/s);
      expect(limits.length).toBeGreaterThan(0);
      for (const { says, source, standing } of limits) {
        expect(says).toMatch(/\.$/);
        expect(Object.keys(limitStandings)).toContain(standing);
        // what has a source names it, and what has none says so
        expect(source === "").toBe(standing === "practice" || standing === "none");
      }
    }
  });

  test("has one criterion a measure that is read off a bid, and an id of its own for each", () => {
    const ids = library.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    const judged = library.map(({ criterion }) => criterion.measure).filter((measure) => measure !== ratingMeasure.id);
    expect(new Set(judged).size).toBe(judged.length);
  });

  // the items that an owner of a synthetic-turf field asks about, by what judges each
  test("covers what an owner asks about", () => {
    const items: Readonly<Record<string, string>> = {
      ...{ "impact as new": "impact-level-as-new", "impact in the last year": "impact-level-at-horizon" },
      ...{ "hardest spot": "impact-level-worst-point", "fall height": "critical-fall-height.f1292" },
      ...{ "head injury criterion": "head-injury-criterion.f3146", "depth margin": "depth-margin" },
      ...{ "stabilising mass": "infill-mass-per-area", "mineral share": "mineral-share" },
      ...{ "mass under water": "submerged-mass", traction: "rotational-resistance.fifa-rotational" },
      ...{ abrasion: "abrasiveness-index.f1015", infiltration: "system-infiltration.f2898" },
      ...{ heat: "surface-temperature-rise.surface-thermometer", "shock layer": "shock-layer" },
      ...{ lead: "lead-content.f2765", "infill loss": "infill-loss.infill-weigh-tickets" },
      ...{ warranty: "warranty-years", "reference fields": "oldest-reference-field" },
      ...{ upkeep: "maintenance-hours", cost: "annual-cost-per-area" },
    };
    const judged = library.map(({ criterion }) => criterion.measure);
    for (const measure of Object.values(items)) expect(judged).toContain(measure);
    const rated = library.filter(({ criterion }) => criterion.measure === ratingMeasure.id).map(({ id }) => id);
    expect(rated).toEqual(["warranty-substance", "references"]);
    expect(library.some(({ criterion: { askedOf } }) => askedOf?.kind === "bids-where")).toBe(true);
    expect(claimedMeasures.length).toBeGreaterThan(library.length);
  });
});

describe("ratings of the library", () => {
  const rated = library.flatMap(({ id, criterion: { valueFunction } }) =>
    valueFunction.kind === "rating" ? [[id, valueFunction.levels] as const] : [],
  );

  test.each(rated)("%s has levels that are told by what has to be so, at even steps from 0 to 1", (_, levels) => {
    expect(levels.map(({ value }) => value)).toEqual(["0", "0.25", "0.5", "0.75", "1"]);
    expect(new Set(levels.map(({ label }) => label)).size).toBe(5);
    for (const { description } of levels) {
      expect(description).toMatch(/^[A-Z].{30,}\.$/);
      // an absolute anchor says nothing of the other bids
      expect(description).not.toMatch(/other bids|better than|worse than|average/);
    }
  });

  test("are known again by their ids, as all of them are judged by one measure", () => {
    const [substance, references] = rated.map(([id]) => library.find((entry) => entry.id === id));
    if (substance === undefined || references === undefined) throw new Error("two ratings");
    const { criteria } = withEntry(empty, substance).result;
    expect(judgingAlready(criteria, substance)?.id).toBe("warranty-substance");
    expect(judgingAlready(criteria, references)).toBeNull();
  });
});

describe("profiles", () => {
  test.each(profiles.map((profile) => [profile.label, profile] as const))(
    "%s makes a full set of criteria out of none",
    (_, profile) => {
      const { result, added, passedOver } = withProfile(empty, profile);
      expect(problemsOf(result)).toEqual([]);
      expect([added.length, passedOver]).toEqual([profile.entries.length, []]);
      const read = requirementsSchema.parse({ ...requirements, ...result });
      expect(read.criteria.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(100, 9);
      // criteria of one heading stand together, and those of none come last
      const order = read.criteria.map(({ heading }) => heading);
      const runs = order.filter((heading, at) => heading !== order[at - 1]);
      expect(new Set(runs).size).toBe(runs.length);
      expect(runs.indexOf("")).toBe(order.includes("") ? runs.length - 1 : -1);
      // every scored criterion stands under a heading of the profile, and every heading holds one
      for (const { valueFunction, heading } of read.criteria)
        if (valueFunction.kind !== "none") expect(read.headings.map(({ id }) => id)).toContain(heading);
      for (const { id, label } of read.headings) {
        expect(label).toBe(Object.entries(libraryHeadings).find(([heading]) => heading === id)?.[1]);
        expect(read.criteria.some(({ heading, weight }) => heading === id && weight > 0)).toBe(true);
      }
    },
  );

  test("are five, for the uses that are named, and give their sources", () => {
    expect(profiles.map(({ id }) => id)).toEqual(["football", "soccer", "multi-use", "community", "elementary"]);
    for (const { founded } of profiles) expect(founded.some(({ source }) => source !== "")).toBe(true);
  });

  test("keep the source of every figure that they change", () => {
    for (const profile of profiles)
      for (const { entry, changes } of profile.entries)
        if (changes.valueFunction !== undefined) expect([entry, changes.source]).toEqual([entry, expect.any(String)]);
    const [elementary] = profiles.filter(({ id }) => id === "elementary");
    if (elementary === undefined) throw new Error("a profile");
    const found = profileEntries(elementary).find(({ id }) => id === "impact-as-new");
    expect(found?.criterion).toMatchObject({ gate: { kind: "at-most", limit: "165 g" } });
    expect(library.find(({ id }) => id === "impact-as-new")?.criterion.gate).toMatchObject({ limit: "200 g" });
  });
});

describe("adding beside what stands there", () => {
  const now = { criteria: fiveCriteria, headings: [] };

  test("changes nothing of it, and moves no weight", () => {
    const before = requirementsSchema
      .parse({ ...requirements, criteria: fiveCriteria })
      .criteria.map(({ weight }) => weight);
    for (const profile of profiles) {
      const { result, added, passedOver } = withProfile(now, profile);
      expect(result.criteria.slice(0, now.criteria.length)).toEqual(now.criteria);
      expect(result.headings).toEqual(now.headings);
      expect(added.every(({ weight }) => weight === "0")).toBe(now.criteria.length > 0);
      expect(added.length + passedOver.length).toBe(profile.entries.length);
      const entries = profileEntries(profile);
      for (const { measure } of added)
        for (const entry of entries.filter(({ criterion }) => criterion.measure === measure))
          expect(judgingAlready(now.criteria, entry)).toBeNull();
      const read = requirementsSchema.parse({ ...requirements, ...result });
      expect(read.criteria.slice(0, before.length).map(({ weight }) => weight)).toEqual(before);
    }
  });

  test("gives a criterion an id of its own", () => {
    const [entry] = library;
    if (entry === undefined) throw new Error("an entry");
    const once = withEntry(empty, entry).result;
    const twice = withEntry(once, entry).result;
    expect(twice.criteria.map(({ id }) => id)).toEqual([entry.id, `${entry.id}-2`]);
    expect(twice.criteria.map(({ weight }) => weight)).toEqual([entry.points, "0"]);
  });

  test("puts a criterion under the heading of its kind where there is one", () => {
    const [entry] = library;
    if (entry === undefined) throw new Error("an entry");
    const headings = [{ id: entry.heading, label: "Falls", points: "10" }];
    expect(withEntry({ criteria: [], headings }, entry).added[0]?.heading).toBe(entry.heading);
    expect(withEntry(empty, entry).added[0]?.heading).toBe("");
  });
});
