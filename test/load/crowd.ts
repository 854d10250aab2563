import { askAction } from "../journeys/asked-actions";
import { type Askings, asked, noAskings } from "./askings";

export type Place = Readonly<{ project: string; kind: "brief" | "bid"; id: string }>;

/** A document with the text in it that editors add to, and the field that holds it. */
export type Known = Readonly<{ version: number; body: object; field: string; text: string }>;

/** A save that was answered with “saved”: the version it made, and the mark that it added. */
export type Acknowledged = Place & Readonly<{ version: number; mark: string }>;

export type Crowd = Readonly<{
  addresses: readonly string[];
  projects: readonly string[];
  bids: readonly string[];
  editors: readonly Readonly<{ id: string; cookie: string }>[];
  /** Cookies of readers, by sign-in or by the link of a project. */
  readers: readonly ((project: string) => string)[];
  /** A document as an open page has it. */
  read: (place: Place) => Promise<Known>;
}>;

export type CrowdOutcome = Readonly<{
  saves: Askings;
  pages: Askings;
  presence: Askings;
  empty: Askings;
  acknowledged: readonly Acknowledged[];
  /** Saves that came too late and were made again over the newer text. */
  overtaken: number;
}>;

/** Mean seconds between two doings of one person; each pause is drawn between half of it and one and a half. */
export const pauses = { editor: 8, typing: 2, reader: 25, presence: 5, empty: 0.5 } as const;

const readingPages = ["brief", "bids", "side-by-side", "infill", "hardness", "cost", "evaluation", "recommendation"];
const releasedPages = ["side-by-side", "infill", "hardness", "cost", "evaluation", "recommendation"];

/** Lets a crowd work and read for some seconds. @param random from 0 to 1, seeded */
export async function letWork(crowd: Crowd, seconds: number, random: () => number): Promise<CrowdOutcome> {
  const until = performance.now() + seconds * 1000;
  const [saves, pages, presence, empty] = [noAskings(), noAskings(), noAskings(), noAskings()];
  const acknowledged: Acknowledged[] = [];
  let overtaken = 0;
  const pick = <T>(from: readonly T[]): T => from[Math.floor(random() * from.length)] as T;
  const rest = (mean: number) =>
    new Promise((resolve) => {
      const wanted = mean * 1000 * (0.5 + random());
      setTimeout(resolve, Math.max(0, Math.min(wanted, until - performance.now())));
    });
  const loop = async (mean: number, work: () => Promise<unknown>): Promise<void> => {
    await rest(mean * 2 * random()); // not all at once
    while (performance.now() < until) {
      await work();
      await rest(mean);
    }
  };

  const edit = (editor: Crowd["editors"][number], number: number) => {
    const project = crowd.projects[number % crowd.projects.length] as string;
    let turn = 0;
    return loop(pauses.editor, async () => {
      turn += 1;
      const address = pick(crowd.addresses);
      const isBrief = turn % 3 !== 0;
      const place = { project, kind: isBrief ? "brief" : "bid", id: isBrief ? "brief" : pick(crowd.bids) } as const;
      const from = `/project/${project}/${isBrief ? "brief" : `bids/${place.id}`}`;
      await asked(pages, `${address}${from}`, { headers: { cookie: editor.cookie } });
      let known = await crowd.read(place);
      await rest(pauses.typing); // others save meanwhile
      for (let attempt = 0; attempt < 20; attempt += 1) {
        // added to what stands, so that a lost save of anybody would be seen in the last text
        const mark = `e${number}.${turn}`;
        const began = performance.now();
        const answer = await askAction(
          "saveDocument",
          [
            { ...place, version: known.version },
            { ...known.body, [known.field]: `${known.text} ${mark}` },
          ],
          { cookie: editor.cookie, from, address },
        ).catch((problem: unknown) => ({ status: 0, text: String(problem) }));
        saves.milliseconds.push(performance.now() - began);
        const saved = /"kind":"saved","version":(\d+)/.exec(answer.text);
        if (saved) {
          acknowledged.push({ ...place, version: Number(saved[1]), mark });
          return;
        }
        if (!answer.text.includes('"kind":"conflict"')) {
          saves.problems.push(`${answer.status} ${answer.text.slice(-300)}`);
          return;
        }
        overtaken += 1;
        known = await crowd.read(place);
      }
      saves.problems.push("overtaken twenty times");
    });
  };

  await Promise.all([
    ...crowd.editors.map((editor, index) => edit(editor, index)),
    ...crowd.editors.map((editor, index) =>
      loop(pauses.presence, async () => {
        const project = crowd.projects[index % crowd.projects.length];
        const address = pick(crowd.addresses);
        await asked(presence, `${address}/project/${project}/together`, {
          method: "POST",
          headers: { cookie: editor.cookie, origin: address, "content-type": "application/json" },
          body: JSON.stringify({
            ...{ does: "shows", page: `page-of-editor-${index}`, place: "brief" },
            documents: [{ kind: "brief", id: "brief" }],
          }),
        });
      }),
    ),
    ...crowd.readers.map((cookieFor, index) =>
      loop(pauses.reader, async () => {
        const project = pick(crowd.projects);
        const isByLink = cookieFor(project).startsWith("evenfield-released=");
        const page = pick(isByLink ? releasedPages : readingPages);
        await asked(pages, `${crowd.addresses[index % 2]}/project/${project}/${page}`, {
          headers: { cookie: cookieFor(project) },
        });
      }),
    ),
    loop(pauses.empty, () => asked(empty, `${pick(crowd.addresses)}/no-such-page`, {}, [404])),
  ]);
  return { saves, pages, presence, empty, acknowledged, overtaken };
}

/** How many askings a second a page answers when eight ask for it without a pause. */
export async function throughput(ask: () => Promise<unknown>, seconds: number): Promise<number> {
  const until = performance.now() + seconds * 1000;
  let answered = 0;
  await Promise.all(
    Array.from({ length: 8 }, async () => {
      while (performance.now() < until) {
        await ask();
        answered += 1;
      }
    }),
  );
  return answered / seconds;
}
