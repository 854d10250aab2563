"use client";
import type { NextStage } from "#lib/procedure";
import { ActForm, ActNote } from "../../../../_components/act-form";
import { moveToStage } from "../actions";

type Words = Readonly<{ button: string; explanation: string; note: string }>;

const wordsOn: Readonly<Record<NextStage["stage"], Words>> = {
  frozen: {
    button: "Freeze the criteria",
    explanation:
      "From then on criteria, limits, weights, field, use and the conventions of cost change by an amendment with a reason only, and there is no way back to a draft.",
    note: "Remark, such as the meeting that decided it",
  },
  "prices-open": {
    button: "Open the prices",
    explanation: "Prices are read and levelled from now on.",
    note: "Remark, such as who was present",
  },
  evaluated: {
    button: "Close the evaluation",
    explanation: "Bids, prices, levelling and agreed values stand from then on.",
    note: "Remark",
  },
  recommended: {
    button: "The recommendation goes to the board",
    explanation: "What the board reads stands from then on.",
    note: "Remark, such as the meeting it goes to",
  },
  awarded: {
    button: "Record the award",
    explanation: "Nothing of the evaluation can be changed or amended afterwards.",
    note: "What the board decided, and why if it differs from the recommendation",
  },
};

const wordsBack: Words = {
  button: "Go back to open prices",
  explanation: "Bids, levelling and, where prices were never sealed, agreed values can be changed again.",
  note: "Reason; it stands on this page and in the record",
};

/** One step that the stages allow, with what it means and what still stands in its way. */
export function NextStageForm({
  project,
  next: { stage, way },
  isSealed,
  bids,
  open,
  may,
}: {
  project: string;
  next: NextStage;
  isSealed: boolean;
  bids: readonly Readonly<{ id: string; words: string }>[];
  /** What has to be done first; null where nothing is. */
  open: string | null;
  /** Whether whoever reads this may take the step. */
  may: boolean;
}) {
  const words = way === "back" ? wordsBack : wordsOn[stage];
  const opensSeal = stage === "prices-open" && way === "on" && isSealed;
  const sentence = opensSeal
    ? "What was sealed is opened and written into the bids. What evaluators agreed on stays as it is from then on."
    : words.explanation;
  const id = `note-${stage}-${way}`;
  return (
    <section aria-label={words.button}>
      <p>{sentence}</p>
      {open === null ? null : <p role="note">{open}</p>}
      {may ? (
        <ActForm
          action={moveToStage.bind(null, project)}
          button={words.button}
          label={words.button}
          isPrimary={way === "on"}
        >
          {(typed) => (
            <>
              <input type="hidden" name="stage" value={stage} />
              {stage === "awarded" ? (
                <p>
                  <label htmlFor="award-to">Award to</label>{" "}
                  <select id="award-to" name="bid" defaultValue={typed.bid ?? ""} required>
                    <option value="">Choose a bid</option>
                    {bids.map((bid) => (
                      <option key={bid.id} value={bid.id}>
                        {bid.words}
                      </option>
                    ))}
                  </select>
                </p>
              ) : null}
              <ActNote id={id} label={words.note} typed={typed.note} isRequired={way === "back"} />
            </>
          )}
        </ActForm>
      ) : (
        <p className="soft">This step is not yours to take; see People and roles.</p>
      )}
    </section>
  );
}
