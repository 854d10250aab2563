import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterAll, afterEach, describe, expect, test } from "vitest";
import { type Editor, editorNamed } from "#lib/access";
import {
  amend,
  choosePrices,
  documentSchemas,
  handInSheet,
  importRefusal,
  moveStage,
  openSheets,
  type ProjectAct,
  projectFileSchema,
  projectRules,
  type RequirementsText,
  type StandingDocuments,
  sealPrices,
} from "#lib/evaluation";
import type { StageId } from "#lib/procedure";
import { explainRefusal, openStore, type Store } from "#lib/store";
import { committeePeople, onePrice, ratedCriteria, ratedFile, ratedToStore, sheetOf } from "./rated-project";

const folder = mkdtempSync(join(tmpdir(), "evenfield-rules-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

type RuledStore = Store<typeof documentSchemas>;
const opened: RuledStore[] = [];
afterEach(async () => {
  for (const store of opened.splice(0)) await store.close();
});

function person(name: string): Editor {
  const named = editorNamed(name);
  if (!named.ok) throw new Error(named.problem.kind);
  return named.value;
}
const [dana, eve, sam, kim] = committeePeople.map(({ name }) => person(name)) as [Editor, Editor, Editor, Editor];
const shown = (text: unknown) => text;

/** A store with the rules of the app and one project: four people, two rated criteria, bids without prices. */
async function start(prices: "open" | "sealed" = "sealed") {
  const place = { kind: "sqlite", folder: mkdtempSync(join(folder, "store-")) } as const;
  const store = await openStore(place, { schemas: documentSchemas, guard: projectRules });
  opened.push(store);
  const made = await store.projects.import(ratedToStore, dana);
  if (made.kind !== "saved") throw new Error(made.kind);
  const project = made.id;
  /** What somebody is answered who acts: "" where it is done. */
  const act = async (editor: Editor, done: ProjectAct): Promise<string> => {
    const outcome = await store.documents.act(project, done, editor);
    if (outcome.kind === "refused") return explainRefusal(outcome.because);
    return outcome.kind === "lacks" ? outcome.sentences.join(" ") : outcome.kind === "done" ? "" : outcome.kind;
  };
  const move = (editor: Editor, stage: Exclude<StageId, "draft">, note = "", bid = "") =>
    act(editor, moveStage(editor, { stage, note, bid }));
  const held = async <K extends "requirements" | "brief" | "bid" | "committee" | "people">(
    kind: K,
    id: string = kind,
  ) => {
    const document = await store.documents.read({ project, kind, id });
    if (document === null) throw new Error(`expected ${kind}`);
    return document;
  };
  /** What somebody is answered who saves a document as a form does: "" where it is saved. */
  const save = async <K extends "requirements" | "brief" | "bid" | "committee" | "people">(
    editor: Editor,
    kind: K,
    change: (body: Awaited<ReturnType<typeof held<K>>>["body"]) => Awaited<ReturnType<typeof held<K>>>["body"],
    id: string = kind,
  ): Promise<string> => {
    const { version, body } = await held(kind, id);
    const outcome = await store.documents.replace({ project, kind, id, version }, change(body), editor);
    return outcome.kind === "refused" ? explainRefusal(outcome.because) : outcome.kind === "saved" ? "" : outcome.kind;
  };
  const refusals = async () => (await store.record.list(project)).filter(({ action }) => action === "refuse").length;
  if (prices === "sealed") expect(await act(dana, choosePrices("sealed"))).toBe("");
  return { store, project, act, move, held, save, refusals };
}

type Started = Awaited<ReturnType<typeof start>>;

const sheet = (level = "level-3") => sheetOf(level, "", { kind: "none" });

const allAgreed = ratedCriteria.flatMap(({ id: criterion }) =>
  ratedFile.bids.map(({ id: bid }) => ({ criterion, bid, level: "level-3", reason: "As the plans show." })),
);

/** Takes a project on to a stage by everything that has to come before it. */
async function onTo({ act, move, save }: Started, stage: StageId): Promise<void> {
  if (stage === "draft") return;
  expect(await move(dana, "frozen")).toBe("");
  if (stage === "frozen") return;
  for (const editor of [eve, sam, kim]) expect(await act(editor, handInSheet(editor, sheet()))).toBe("");
  expect(await act(dana, openSheets(dana))).toBe("");
  expect(await save(dana, "committee", (body) => ({ ...body, agreed: allAgreed }))).toBe("");
  for (const next of ["prices-open", "evaluated", "recommended"] as const) {
    expect(await move(dana, next)).toBe("");
    if (next === stage) return;
  }
  expect(await move(dana, "awarded", "Voted.", "bid-b")).toBe("");
}

const withLimit =
  (limit: string) =>
  (body: RequirementsText): RequirementsText => ({ ...body, impact: { ...body.impact, limit } });

describe("what may be changed at which stage", () => {
  /** Written down anew from what the stages mean: the owner’s choice, no source. "" where it may be. */
  test.each([
    ["draft", { requirements: "free", brief: "free", bid: "free" }],
    ["frozen", { requirements: "held", brief: "held", bid: "free" }],
    ["prices-open", { requirements: "held", brief: "held", bid: "free" }],
    ["evaluated", { requirements: "held", brief: "held", bid: "held" }],
    ["recommended", { requirements: "held", brief: "held", bid: "held" }],
    ["awarded", { requirements: "held", brief: "held", bid: "held" }],
  ] as const)("at “%s”: %j", { timeout: 120_000 }, async (stage, expected) => {
    const started = await start();
    await onTo(started, stage);
    const { save, refusals } = started;
    const before = await refusals();
    const answers = {
      requirements: await save(dana, "requirements", withLimit("160 g")),
      brief: await save(dana, "brief", (body) => ({ ...body, use: { ...body.use, hoursPerYear: "1,234 h/year" } })),
      bid: await save(dana, "bid", (body) => ({ ...body, system: "Another kind of surface" }), "bid-a"),
    };
    const told = Object.fromEntries(
      Object.entries(answers).map(([kind, said]) => [kind, said === "" ? "free" : "held"]),
    );
    expect(told).toEqual(expected);
    expect((await refusals()) - before).toBe(Object.values(expected).filter((way) => way === "held").length);
    expect(await started.store.record.verify(started.project)).toMatchObject({ kind: "intact" });
  });

  test("a person without the role is told so at any stage, and the record says so", async () => {
    const { save, move, act, refusals } = await start();
    expect(await save(eve, "requirements", withLimit("160 g"))).toMatch(
      /^Eve Okoro is evaluator here\. To change the brief/,
    );
    expect(await save(eve, "bid", (body) => body, "bid-a")).toMatch(/^Eve Okoro is evaluator here\. To enter bids/);
    expect(await move(eve, "frozen")).toMatch(/^Eve Okoro is evaluator here\. To freeze the criteria/);
    expect(await act(dana, handInSheet(dana, sheet()))).toMatch(/^Dana Ruiz is owner’s administrator here\. To score/);
    expect(await refusals()).toBe(4);
  });

  test("no stage is left out, and none is taken twice", { timeout: 120_000 }, async () => {
    const started = await start("open");
    const { move, refusals } = started;
    expect(await move(dana, "evaluated")).toMatch(/can’t go to “evaluated”/);
    expect(await move(dana, "frozen")).toBe("");
    expect(await move(dana, "frozen")).toMatch(/can’t go to “criteria frozen”/);
    expect(await move(dana, "prices-open")).toBe("");
    expect(await move(dana, "evaluated")).toMatch(
      /agreed on every rated value\. Still open: “Plan for care” for bid A/,
    );
    expect(await refusals()).toBe(3);
  });

  test("a step back needs a reason, and an award names a bid that is there", { timeout: 120_000 }, async () => {
    const started = await start();
    await onTo(started, "recommended");
    expect(await started.move(dana, "prices-open", " ")).toBe("A step back needs a reason.");
    expect(await started.move(dana, "awarded", "", "bid-z")).toBe("Name the bid that the award goes to.");
    expect(await started.move(dana, "prices-open", "A price was read wrongly.")).toBe("");
    expect(await started.save(dana, "bid", (body) => ({ ...body, system: "Corrected" }), "bid-a")).toBe("");
    // agreed before prices were known: it stays, even on the way back
    expect(await started.save(dana, "committee", (body) => ({ ...body, agreed: [] }))).toMatch(
      /stays as it was before prices/,
    );
  });
});

describe("an amendment", () => {
  test("changes what is frozen with its reason, by whoever may; without one it does not", async () => {
    const started = await start();
    await onTo(started, "frozen");
    const { act, held, refusals, store, project } = started;
    const { version, body } = await held("requirements");
    const amended = { document: "requirements", version, body: withLimit("160 g")(body) } as const;
    expect(await act(dana, amend(dana, amended, " ", shown))).toMatch(/^Say why this is amended/);
    expect(await act(dana, amend(dana, { ...amended, body }, "Why not.", shown))).toMatch(/nothing to amend/);
    expect(await act(eve, amend(eve, amended, "I would rather.", shown))).toMatch(/^Eve Okoro is evaluator here/);
    expect((await held("requirements")).body.impact.limit).toBe("165 g");
    expect(await act(dana, amend(dana, amended, "The insurer asks for it.", shown))).toBe("");
    expect((await held("requirements")).body.impact.limit).toBe("160 g");
    const [procedure] = (await store.projects.load(project))?.documents.procedure ?? [];
    expect(procedure?.model.amendments).toMatchObject([
      {
        ...{ by: { id: "dana-ruiz" }, reason: "The insurer asks for it." },
        changes: [{ field: "impact, limit", from: "165 g", to: "160 g" }],
      },
    ]);
    // the same again: it was made over a version that no longer stands
    expect(await act(dana, amend(dana, amended, "The insurer asks for it.", shown))).toMatch(
      /^Somebody amended it after/,
    );
    expect(await refusals()).toBe(1);
  });

  test("is no longer to be had once the award is made", { timeout: 120_000 }, async () => {
    const started = await start();
    await onTo(started, "awarded");
    const { version, body } = await started.held("requirements");
    const amended = { document: "requirements", version, body: withLimit("160 g")(body) } as const;
    expect(await started.act(dana, amend(dana, amended, "Late.", shown))).toMatch(/The award is made/);
  });
});

describe("scoresheets", () => {
  test("are each their evaluator’s own, opened together once all are in, and never again", {
    timeout: 120_000,
  }, async () => {
    const { act, save, store, project, held } = await start();
    expect(await act(eve, handInSheet(eve, sheet("level-5")))).toMatch(/say what the level “Proven” rests on/);
    expect(await act(eve, handInSheet(eve, sheet()))).toBe("");
    expect(await act(sam, handInSheet(eve, sheet()))).toMatch(/^This is the scoresheet of Eve Okoro/);
    expect(await act(dana, openSheets(dana))).toBe("Sheets are still awaited from Sam Lind, Kim Vale.");
    const agreeing = await store.documents.create({ project, kind: "committee" }, { agreed: allAgreed }, dana);
    expect(agreeing.kind === "refused" && explainRefusal(agreeing.because)).toMatch(/^Evaluators score alone first/);
    for (const editor of [sam, kim]) expect(await act(editor, handInSheet(editor, sheet()))).toBe("");
    expect(await act(sam, handInSheet(sam, sheet("level-2")))).toBe(""); // handed in anew while nothing is open
    const gone = await save(dana, "people", ({ people = [] }) => ({
      people: people.filter(({ name }) => name !== "Sam Lind"),
    }));
    expect(gone).toMatch(/^Sam Lind has handed in a scoresheet and stays on the list/);
    expect(await act(dana, openSheets(dana))).toBe("");
    expect(await act(dana, openSheets(dana))).toBe("The scoresheets are open already.");
    expect(await act(eve, handInSheet(eve, sheet("level-2")))).toMatch(/^The scoresheets are open, so none can be/);
    expect(await save(dana, "committee", (body) => ({ ...body, opened: null }))).toBe(
      "Scoresheets are opened once, and stay open.",
    );
    const sheets = (await store.projects.load(project))?.documents.scoresheet ?? [];
    const levels = sheets.map(({ model }) =>
      model.contents.kind === "open" ? model.contents.sheet.ratings[0]?.level : "sealed",
    );
    expect(levels).toEqual(["level-3", "level-2", "level-3"]);
    expect((await held("committee")).model.opened?.key).toHaveLength(43);
  });
});

describe("sealed prices", () => {
  const price = onePrice("$7,654,321", "Kestrel works");

  test("stand nowhere in what is stored, and in the bids once they are opened", { timeout: 120_000 }, async () => {
    const started = await start();
    const { act, save, store, project, held } = started;
    expect(await act(dana, sealPrices(dana, "bid-a", price))).toBe("");
    expect(await save(dana, "bid", (body) => ({ ...body, ...price }), "bid-a")).toMatch(
      /^Prices of this project are sealed/,
    );
    expect(await store.drafts.read({ project, kind: "bid", id: "bid-a" }, dana)).toBeNull();
    await onTo(started, "frozen");
    const everything = JSON.stringify([await store.projects.load(project), await store.record.list(project)]);
    expect(everything).not.toMatch(/7,?654,?321|Kestrel/);
    expect(await started.move(dana, "prices-open")).toMatch(/^Sealed prices are opened once evaluators have agreed/);
    for (const editor of [eve, sam, kim]) expect(await act(editor, handInSheet(editor, sheet()))).toBe("");
    expect(await act(dana, openSheets(dana))).toBe("");
    expect(await save(dana, "committee", (body) => ({ ...body, agreed: allAgreed }))).toBe("");
    expect(await started.move(dana, "prices-open")).toBe("");
    expect((await held("bid", "bid-a")).body).toMatchObject(price);
    expect(await act(dana, sealPrices(dana, "bid-a", price))).not.toBe("");
    expect(await act(eve, handInSheet(eve, sheet()))).not.toBe("");
  });

  test("are settled while the project is a draft and no bid shows a price", async () => {
    const { act, save, move } = await start("open");
    expect(await save(dana, "bid", (body) => ({ ...body, ...price }), "bid-b")).toBe("");
    expect(await act(dana, choosePrices("sealed"))).toBe(
      "Bid B shows prices already, so they can’t be sealed any more.",
    );
    expect(await act(dana, sealPrices(dana, "bid-a", price))).toBe("Prices are not sealed in this project.");
    expect(await save(dana, "bid", (body) => ({ ...body, prices: [], statedTotal: "" }), "bid-b")).toBe("");
    expect(await move(dana, "frozen")).toBe("");
    expect(await act(dana, choosePrices("sealed"))).toBe(
      "Whether prices are sealed is settled before the criteria are frozen.",
    );
  });

  test("and prices in the bids do not go together in a project file", () => {
    const [first, ...others] = ratedFile.bids;
    if (first === undefined) throw new Error("expected a bid");
    const file = { ...ratedFile, procedure: { prices: "sealed" as const }, bids: [{ ...first, ...price }, ...others] };
    const read = projectFileSchema.safeParse(file);
    expect(read.error?.issues).toMatchObject([{ path: ["bids", 0, "prices"] }]);
  });
});

describe("a project file", () => {
  test("is refused where it tells of the freeze of the project here with anything frozen otherwise", async () => {
    const started = await start("open");
    const standing = async () => {
      const loaded = await started.store.projects.load(started.project);
      return ((kind) => loaded?.documents[kind] ?? []) as StandingDocuments;
    };
    const asked = async (file: typeof ratedFile) =>
      importRefusal({ text: file, project: projectFileSchema.parse(file) }, await standing());
    const looser = { ...ratedFile, requirements: withLimit("190 g")(ratedFile.requirements) };
    expect(await asked(looser)).toBeNull(); // nothing is frozen
    await onTo(started, "frozen");
    const procedure = (await standing())("procedure")[0]?.body ?? {};
    expect(await asked({ ...ratedFile, procedure })).toBeNull();
    expect(await asked(looser)).toBeNull(); // a copy that tells of no freeze
    expect(await asked({ ...looser, procedure })).toMatchObject({ fields: ["impact, limit"] });
    const renamed = { ...ratedFile.brief, name: "Another name" };
    expect(await asked({ ...ratedFile, brief: renamed, procedure })).toBeNull(); // the name is not frozen
    const used = { ...ratedFile.brief, use: { ...ratedFile.brief.use, hoursPerYear: "1,234 h/year" } };
    expect((await asked({ ...ratedFile, brief: used, procedure }))?.fields).toEqual([expect.stringMatching(/^use/)]);
  });
});

test("whatever is tried in whatever order, nothing frozen moves without an amendment, and the record holds", {
  timeout: 300_000,
}, async () => {
  const limits = ["165 g", "160 g", "190 g"];
  const tries = fc.constantFrom("save", "stale save", "amend", "on", "back", "hand in", "open", "agree", "remove bid");
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.tuple(tries, fc.nat(3), fc.nat(2)), { minLength: 6, maxLength: 22 }),
      async (sequence) => {
        const started = await start("open");
        const { act, move, save, held, store, project } = started;
        const editors = [dana, eve, sam, kim];
        let frozenLimit: string | null = null;
        let amendments = 0;
        for (const [what, who, choice] of sequence) {
          const editor = editors[who] ?? dana;
          const limit = limits[choice] ?? "165 g";
          if (what === "save") await save(editor, "requirements", withLimit(limit));
          if (what === "stale save") {
            const { body } = await held("requirements");
            await store.documents.replace(
              { project, kind: "requirements", id: "requirements", version: choice },
              withLimit(limit)(body),
              editor,
            );
          }
          if (what === "amend") {
            const { version, body } = await held("requirements");
            const amended = { document: "requirements", version, body: withLimit(limit)(body) } as const;
            await act(editor, amend(editor, amended, "It has to be.", shown));
          }
          if (what === "on")
            for (const stage of ["frozen", "prices-open", "evaluated", "recommended", "awarded"] as const)
              if ((await move(editor, stage, "", "bid-a")) === "") break;
          if (what === "back") await move(editor, "prices-open", "A reason.");
          if (what === "hand in") await act(editor, handInSheet(editor, sheet()));
          if (what === "open") await act(editor, openSheets(editor));
          if (
            what === "agree" &&
            (await store.documents.read({ project, kind: "committee", id: "committee" })) !== null
          )
            await save(editor, "committee", (body) => ({ ...body, agreed: allAgreed }));
          if (what === "remove bid") {
            const bid = await store.documents.read({ project, kind: "bid", id: "bid-d" });
            if (bid !== null)
              await store.documents.remove({ project, kind: "bid", id: "bid-d", version: bid.version }, editor);
          }
          const [procedure] = (await store.projects.load(project))?.documents.procedure ?? [];
          const steps = procedure?.model.steps ?? [];
          const now = (await held("requirements")).body.impact.limit;
          const made = procedure?.model.amendments.length ?? 0;
          if (frozenLimit !== null && made === amendments) expect(now).toBe(frozenLimit);
          frozenLimit = steps.length > 0 ? now : null;
          amendments = made;
        }
        expect(await store.record.verify(project)).toMatchObject({ kind: "intact" });
        await store.close();
        opened.pop();
      },
    ),
    { numRuns: 6 },
  );
});
