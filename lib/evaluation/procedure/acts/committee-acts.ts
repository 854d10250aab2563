import { explainSheetGap, type SheetText, scoringOf, sheetGaps, sheetSchema, withoutExcused } from "#lib/committee";
import type { Doer } from "#lib/procedure";
import { doerOf, lacks, locks, type ProjectAct, type WrittenDocument, writes } from "../project-documents";
import { committeeIn, criteriaIn, peopleIn, scoresheetsIn } from "../standing-project";

/** Hands in a scoresheet, sealed; a sheet that was handed in before is replaced. */
export const handInSheet =
  (editor: Doer, typed: unknown): ProjectAct =>
  ({ standing, at, seal }) => {
    const read = sheetSchema.safeParse(typed);
    if (!read.success) return lacks(...new Set(read.error.issues.map(({ message }) => message)));
    const bids = standing("bid").map(({ id, model }) => ({ id, letter: model.letter }));
    const gaps = sheetGaps(read.data, criteriaIn(standing), bids);
    if (gaps.length > 0) return lacks(...gaps.map(explainSheetGap));
    const sheet: SheetText = {
      statement: read.data.statement as SheetText["statement"],
      ratings: [...withoutExcused(read.data).ratings],
    };
    const sealed = seal(locks.scores, editor.id, sheet);
    return writes({
      ...{ kind: "scoresheet", id: editor.id },
      body: { evaluator: doerOf(editor), handedInAt: at, contents: { kind: "sealed", sealed } },
    });
  };

/** Opens all scoresheets together and makes their key public. */
export const openSheets =
  (editor: Doer): ProjectAct =>
  ({ standing, at, unseal, keyOf }) => {
    const { awaited, stage } = scoringOf(peopleIn(standing), scoresheetsIn(standing), committeeIn(standing));
    if (stage === "opened") return lacks("The scoresheets are open already.");
    if (awaited.length > 0)
      return lacks(`Sheets are still awaited from ${awaited.map(({ name }) => name).join(", ")}.`);
    const opened = standing("scoresheet").flatMap(({ id, body, model }): readonly WrittenDocument[] => {
      if (model.contents.kind === "open") return [];
      const sheet = unseal(locks.scores, id, model.contents.sealed) as SheetText;
      return [{ kind: "scoresheet", id, body: { ...body, contents: { kind: "open", sheet } } }];
    });
    if (opened.length === 0) return lacks("Nobody has handed in a scoresheet yet.");
    const [committee] = standing("committee");
    const opening = { at, by: doerOf(editor), key: keyOf(locks.scores) };
    return writes(...opened, {
      ...{ kind: "committee", id: "committee" },
      body: { ...committee?.body, opened: opening },
    });
  };
