import { createHash } from "node:crypto";
import { afterEach, describe, expect, test } from "vitest";
import { explainContentFault } from "#lib/store";
import { seeded } from "../faults/seeded";
import { ada, ben, northField, open, type TrialMaker, type TrialStore, withProject } from "./trial";

/** Bytes of every value, the same for the same seed. */
function someBytes(length: number, seed: number): Uint8Array {
  const random = seeded(seed);
  return Uint8Array.from({ length }, () => Math.floor(random() * 256));
}

export const sha256Of = (bytes: Uint8Array): string => createHash("sha256").update(bytes).digest("hex");

/** The whole of a kept file; null if it is not here. */
export async function readBack(store: TrialStore, project: string, sha256: string): Promise<Uint8Array | null> {
  const file = await store.contents.open(project, sha256);
  if (file === null) return null;
  const parts: Uint8Array[] = [];
  for await (const part of file.parts()) parts.push(part);
  return Buffer.concat(parts);
}

/** What every database has to do for files that are kept. `trial` gives a new, empty database. */
export function contentsContract(trial: TrialMaker): void {
  const opened: { close: () => Promise<void> }[] = [];
  afterEach(async () => {
    for (const store of opened.splice(0)) await store.close();
  });
  const start = async () => {
    const { location, raw } = await trial("tables");
    const made = await withProject(location);
    opened.push(made.store);
    return { ...made, location, raw };
  };
  const part = 256 * 1024;

  describe("kept files", () => {
    for (const length of [1, part - 1, part, part + 1, 3 * part, 1_000_003])
      test(`of ${length} bytes come back to the last bit, from another process’s store too`, async () => {
        const { store, project, location } = await start();
        const bytes = someBytes(length, length);
        const kept = await store.contents.keep(project, { name: "report.pdf" }, bytes, ben);
        expect(kept).toMatchObject({ kind: "saved", version: 1 });
        const other = await open(location);
        opened.push(other);
        expect(Buffer.compare((await readBack(other, project, sha256Of(bytes))) ?? new Uint8Array(), bytes)).toBe(0);
        expect((await other.contents.open(project, sha256Of(bytes)))?.bytes).toBe(length);
        expect(await other.contents.verify(project)).toEqual([]);
      });

    test("are documents of the project with their hash, in the record", async () => {
      const { store, project } = await start();
      const bytes = someBytes(900, 1);
      const facts = { name: "report.pdf", sha256: sha256Of(bytes), bytes: 900 };
      // a view into a larger buffer, as a server hands them over
      const view = Uint8Array.from([1, 2, 3, ...bytes, 4, 5]).subarray(3, 903);
      const kept = await store.contents.keep(project, { name: "report.pdf" }, view, ben);
      const [document] = (await store.projects.load(project))?.documents.attachment ?? [];
      expect(document).toMatchObject({ version: 1, updatedBy: "Ben", body: facts });
      expect((await store.record.list(project)).at(-1)).toMatchObject({
        ...{ who: "Ben", action: "create", kind: "attachment", id: kept.kind === "saved" ? kept.id : "" },
        ...{ before: null, after: { version: 1, body: facts } },
      });
      expect(await store.record.verify(project)).toMatchObject({ kind: "intact", entries: 6 });
      expect(await store.contents.held(project)).toEqual(new Set([facts.sha256]));
    });

    test("are kept once however often they come, and stay when an attachment is removed", async () => {
      const { store, project } = await start();
      const bytes = someBytes(2000, 2);
      const first = await store.contents.keep(project, { name: "a.pdf" }, bytes, ada);
      expect(await store.contents.keep(project, { name: "b.pdf" }, bytes, ada)).toMatchObject({ kind: "saved" });
      expect((await store.projects.load(project))?.documents.attachment).toHaveLength(2);
      if (first.kind !== "saved") throw new Error(first.kind);
      await store.documents.remove({ project, kind: "attachment", id: first.id, version: 1 }, ada);
      expect(await readBack(store, project, sha256Of(bytes))).not.toBeNull();
    });

    test("belong to their project alone and go out of sight with it", async () => {
      const { store, project } = await start();
      const bytes = someBytes(50, 3);
      await store.contents.keep(project, { name: "a.pdf" }, bytes, ada);
      const other = await store.projects.create(northField, ada);
      expect(await store.contents.open(other.kind === "saved" ? other.id : "", sha256Of(bytes))).toBeNull();
      await store.projects.remove(project, ada);
      expect(await store.contents.open(project, sha256Of(bytes))).toBeNull();
      expect(await store.contents.keep(project, { name: "b.pdf" }, bytes, ada)).toEqual({ kind: "gone" });
      expect(await store.contents.keep("nowhere", { name: "b.pdf" }, bytes, ada)).toEqual({ kind: "gone" });
    });

    test("that an import names are awaited, and taken where they are missed", async () => {
      const { store } = await start();
      const bytes = someBytes(3000, 4);
      const body = { name: "report.pdf", sha256: sha256Of(bytes), bytes: 3000 };
      const made = await store.projects.import(
        { ...northField, documents: [...northField.documents, { kind: "attachment", id: "report", body }] },
        ada,
      );
      const project = made.kind === "saved" ? made.id : "";
      expect(await store.contents.held(project)).toEqual(new Set());
      expect(await store.contents.verify(project)).toEqual([]);
      const kept = await store.contents.keep(project, { name: "the same under another name.pdf" }, bytes, ben);
      expect(kept).toEqual({ kind: "supplied", ids: ["report"] });
      expect((await store.projects.load(project))?.documents.attachment.map(({ id }) => id)).toEqual(["report"]);
      expect(await store.contents.held(project)).toEqual(new Set([body.sha256]));
      expect(await store.record.verify(project)).toMatchObject({ kind: "intact", entries: 6 });
    });

    test("are not kept where the attachment is refused", async () => {
      const { store, project } = await start();
      const bytes = someBytes(10, 5);
      await expect(store.contents.keep(project, { name: 3 as unknown as string }, bytes, ada)).rejects.toThrow(
        TypeError,
      );
      expect(await store.contents.keep(project, { name: "a\0.pdf" }, bytes, ada)).toMatchObject({ kind: "refused" });
      expect(await store.contents.held(project)).toEqual(new Set());
    });

    test("that were altered or taken out past the record are told", async () => {
      const { store, project, raw } = await start();
      const kept = await store.contents.keep(project, { name: "a.pdf" }, someBytes(part + 5, 6), ada);
      const id = kept.kind === "saved" ? kept.id : "";
      await raw("delete from content_part where part = 1");
      const [altered] = await store.contents.verify(project);
      expect(altered && explainContentFault(altered)).toBe(
        `The file of attachment “${id}” is not the one that was kept: its hash does not belong to what is there.`,
      );
      await raw("delete from content_part");
      await raw("delete from content");
      const [missing] = await store.contents.verify(project);
      expect(missing && explainContentFault(missing)).toBe(
        `The file of attachment “${id}” is not there: it was taken out past the record.`,
      );
    });

    test("come to no more than 300 in one project", async () => {
      const { store } = await start();
      const body = (index: number) => ({ name: `${index}.pdf`, sha256: "0".repeat(64), bytes: 1 });
      const many = Array.from({ length: 300 }, (_, index) => ({ kind: "attachment", body: body(index) }) as const);
      const made = await store.projects.import({ ...northField, documents: [...northField.documents, ...many] }, ada);
      const project = made.kind === "saved" ? made.id : "";
      expect(await store.contents.keep(project, { name: "a.pdf" }, someBytes(5, 7), ada)).toEqual({
        kind: "too-many-files",
        limit: 300,
      });
    });
  });
}
