"use client";
import { useRouter } from "next/navigation";
import { useEffect, useState, useTransition } from "react";
import { type FieldPath, FormProvider, useForm } from "react-hook-form";
import { evidenceLevels, matchEvidence, matchMethod, methodOf } from "#lib/claim";
import { type AnswerText, answeredBid, type BidText, bidSchema } from "#lib/evaluation";
import { ChoiceField } from "../../../../../../_components/form/choice-field";
import { discardDraft } from "../../../../../../_components/form/discard-draft";
import { freshId } from "../../../../../../_components/form/fresh-id";
import { LongTextField } from "../../../../../../_components/form/long-text-field";
import type { DocumentAddress } from "../../../../../../_components/form/save-outcome";
import { TextField } from "../../../../../../_components/form/text-field";
import { forgetUnsent, keepUnsent, unsentLeftBehind } from "../../../../../../_components/form/unsent-text";
import { saveDocument } from "../../../../_actions/save-document";
import styles from "./answer-form.module.css";
import { amendable, fieldLabels } from "./field-labels";

export type AskedFinding = Readonly<{
  key: string;
  question: string;
  claims: readonly { id: string; label: string }[];
}>;

/** `shown` is what stood in the fields before anybody typed: only what differs from it is the answer's. */
type AmendedClaim = { id: string; fields: Record<string, string>; shown: Record<string, string> };
type Draft = Omit<AnswerText, "claims"> & { claims: AmendedClaim[] };

/** Records what the bidder answered to one question and, where the answer changes them, the claims it speaks of. */
export function AnswerForm({
  where,
  version,
  bid,
  asked,
}: {
  where: DocumentAddress;
  version: number;
  bid: BidText;
  asked: AskedFinding;
}) {
  const router = useRouter();
  const [kept] = useState<DocumentAddress>({ ...where, id: `${where.id} answer ${asked.key}` });
  const [said, setSaid] = useState("");
  /** Until the newer version of the bid is here, recording again would be stale again. */
  const [isRefreshing, startRefreshing] = useTransition();
  const form = useForm<Draft>({ defaultValues: blank(bid, asked) });
  const { formState, setError, handleSubmit, reset, watch } = form;

  useEffect(() => {
    let here = true;
    const watching = watch((values) => keepUnsent(kept, { version, values }));
    void unsentLeftBehind(kept).then((left) => {
      if (!here || left === null) return;
      reset(left.values as Draft);
      left.forget();
      keepUnsent(kept, left);
      setSaid("What you typed here before was kept in this browser and is back. It is not recorded yet.");
    });
    return () => {
      here = false;
      watching.unsubscribe();
    };
  }, [kept, reset, version, watch]);

  const isBusy = formState.isSubmitting || isRefreshing;
  const record = async (draft: Draft) => {
    if (isRefreshing) return;
    const id = freshId(
      "answer",
      (bid.answers ?? []).map((answer) => answer.id),
    );
    const claims = draft.claims.map(({ id: claim, ...texts }) => ({ id: claim, fields: asStored(typed(texts)) }));
    const next = answeredBid(bid, id, { ...draft, claims, finding: asked.key, asked: asked.question });
    const read = bidSchema.safeParse(next);
    if (!read.success) {
      // Sent like this the whole bid would be kept as a draft; the answer alone has to be put right.
      for (const { path, message } of read.error.issues) {
        const field = fieldOf(path, next, draft);
        if (field !== null) setError(field, { message });
      }
      const messages = read.error.issues.map(({ message }) => message).join(" ");
      return setSaid(`Not recorded: ${messages} What you typed is kept.`);
    }
    const outcome = await saveDocument({ ...where, version }, next).catch(() => null);
    switch (outcome?.kind) {
      case undefined:
        return setSaid("Not recorded: the server can’t be reached. What you typed is kept in this browser.");
      case "saved":
        forgetUnsent(kept);
        return router.replace(`?recorded=${encodeURIComponent(asked.key)}`);
      case "rejected":
        return setSaid(`Not recorded: ${outcome.problems.map(({ message }) => message).join(" ")}`);
      case "conflict":
        // The server kept the stale bid as a draft. Only the answer is typed here, and it stays in the form.
        await discardDraft(where);
        startRefreshing(() => router.refresh());
        return setSaid(
          `Not recorded: ${outcome.savedBy} saved the bid in the meantime. The page now shows that version and what you typed is kept; look at the claims and record again.`,
        );
      case "refused":
        return setSaid(`Not recorded: ${outcome.reason} What you typed is kept in this browser.`);
      case "gone":
        return setSaid("Not recorded: the bid was removed in the meantime. What you typed is kept in this browser.");
    }
  };

  return (
    <FormProvider {...form}>
      <form className={`${styles.form} screen-only`} onSubmit={handleSubmit(record)} noValidate>
        <LongTextField
          name="answer"
          label="What the bidder answered"
          hint="Word for word, or the part that answers this."
        />
        <div className={styles.fields}>
          <TextField
            name="received"
            label="Received on"
            hint="Year-month-day, for instance 2027-03-15. May be empty."
          />
          <ChoiceField
            name="outcome"
            label="Does that settle the question?"
            choices={[
              { value: "settled", label: "Yes, it is settled" },
              { value: "still open", label: "No, it is still open" },
            ]}
          />
        </div>
        {asked.claims.map(({ id, label }, index) => (
          <fieldset key={id} className={styles.claim}>
            <legend>{label}: what stands from now on</legend>
            <p className={styles.hint}>
              Change only what the answer changes. What stood before is kept with the answer.
            </p>
            <div className={styles.fields}>
              {amendable.map((field) => (
                <TextField key={field} name={`claims.${index}.fields.${field}`} label={fieldLabels[field] ?? field} />
              ))}
            </div>
          </fieldset>
        ))}
        <p className="row">
          <button type="submit" className="primary" aria-disabled={isBusy}>
            Record the answer
          </button>
          <span role="status">{isBusy ? "Recording…" : said}</span>
        </p>
      </form>
    </FormProvider>
  );
}

function blank(bid: BidText, asked: AskedFinding): Draft {
  const claims = asked.claims.flatMap(({ id }) => {
    const claim = bid.claims.find((candidate) => candidate.id === id);
    if (claim === undefined) return [];
    const shown = asShown(Object.fromEntries(amendable.map((field) => [field, claim[field] ?? ""])));
    return [{ id, fields: shown, shown }];
  });
  return { finding: asked.key, asked: asked.question, answer: "", received: "", outcome: "settled", claims };
}

type Fields = Readonly<Record<string, string>>;

/** The fields that a person changed. What somebody else saved in the others meanwhile stays as it is. */
const typed = ({ fields, shown }: Pick<AmendedClaim, "fields" | "shown">): Fields =>
  Object.fromEntries(Object.entries(fields).filter(([field, text]) => text !== shown[field]));

/** Methods and evidence by their names, as people write them. */
function asShown(fields: Fields): Record<string, string> {
  const method = matchMethod(fields.method ?? "");
  const evidence = evidenceLevels.find(({ id }) => id === fields.evidence)?.label;
  const name = method === null ? fields.method : method === "not-stated" ? "not stated" : methodOf(method).designation;
  return { ...fields, method: name ?? "", evidence: evidence ?? fields.evidence ?? "" };
}

/** The ids behind names that are known, so that a claim nobody changed stays the same to the letter. */
function asStored(fields: Fields): Record<string, string> {
  const { method, evidence } = fields;
  return {
    ...fields,
    ...(method === undefined ? {} : { method: matchMethod(method) ?? method }),
    ...(evidence === undefined ? {} : { evidence: matchEvidence(evidence) ?? evidence }),
  };
}

/** Where the form shows a problem of the bid: in the answer itself or in a claim that it amends. */
function fieldOf(path: readonly PropertyKey[], next: BidText, { claims }: Draft): FieldPath<Draft> | null {
  const [list, at, name] = path.map(String);
  if (list === "answers" && (name === "answer" || name === "received" || name === "outcome")) return name;
  const row = list === "claims" ? next.claims[Number(at)] : undefined;
  const index = claims.findIndex(({ id }) => id === row?.id);
  return index < 0 || name === undefined ? null : `claims.${index}.fields.${name}`;
}
