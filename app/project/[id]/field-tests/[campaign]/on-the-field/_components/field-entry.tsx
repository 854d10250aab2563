"use client";
import { zodResolver } from "@hookform/resolvers/zod";
import { useCallback, useEffect, useId, useState } from "react";
import { FormProvider, type Resolver, useForm } from "react-hook-form";
import { type CampaignText, documentSchemas } from "#lib/evaluation";
import { ConflictNotice } from "../../../../../../_components/form/conflict-notice";
import { DraftNotice } from "../../../../../../_components/form/draft-notice";
import { freshId } from "../../../../../../_components/form/fresh-id";
import type { DocumentAddress } from "../../../../../../_components/form/save-outcome";
import { type Draft, startOf } from "../../../../../../_components/form/start-of";
import { keepUnsent, type UnsentText } from "../../../../../../_components/form/unsent-text";
import { useAutosave } from "../../../../../../_components/form/use-autosave";
import { saveDocument } from "../../../../_actions/save-document";
import { DeviceStatus } from "./device-status";
import styles from "./field-entry.module.css";
import { type KeptPage, keepPage } from "./kept-page";
import { keepSaved, lastSaved } from "./last-saved";
import { LocationEntry } from "./location-entry";
import { LocationSteps } from "./location-steps";

type Start = Readonly<{ version: number; values: CampaignText; draft: Draft<CampaignText> | null }>;

/** The page may be an older one that was kept: then it goes on from what the server last took from this device. */
export function FieldEntry({ where, ...served }: Start & Readonly<{ where: DocumentAddress }>) {
  const [start, setStart] = useState<Start>(served);
  const [place] = useState(where);
  const { version } = start;
  useEffect(() => {
    const saved = lastSaved(place);
    if (saved === null || saved.version <= version) return;
    setStart({ version: saved.version, values: saved.values as CampaignText, draft: null });
  }, [place, version]);
  return <EntryForm key={start.version} where={place} start={start} />;
}

function EntryForm({ where, start: { version, values, draft } }: { where: DocumentAddress; start: Start }) {
  const schema = documentSchemas.campaign;
  const [begun] = useState(() => startOf({ schema, version, values, draft }));
  const form = useForm<CampaignText>({
    defaultValues: begun.values,
    resolver: zodResolver(schema) as unknown as Resolver<CampaignText>,
    mode: "onBlur",
  });
  const [opened, setOpened] = useState<KeptPage>("not-yet");
  const [index, setIndex] = useState(0);
  const [count, setCount] = useState(begun.values.locations.length);
  const statusId = useId();
  const keep = useCallback(() => void keepPage(where.project, setOpened), [where]);
  const onSaved = useCallback(
    (saved: UnsentText) => {
      keepSaved(where, saved);
      keep();
    },
    [keep, where],
  );
  // a draft does not count, so the device holds on to its text until it reads
  const onKeptAsDraft = useCallback((text: UnsentText) => keepUnsent(where, text), [where]);
  const { state, saveNow, replaceAll, keepMine, openTheirs } = useAutosave({
    form,
    where,
    version,
    save: saveDocument,
    start: begun.start,
    onSaved,
    onKeptAsDraft,
  });
  useEffect(() => {
    keep();
    const asked = Number(/^#location-(\d+)$/.exec(location.hash)?.[1]);
    if (asked >= 1) setIndex(asked - 1);
  }, [keep]);
  useEffect(() => {
    const watching = form.watch(() => setCount(form.getValues("locations").length));
    return () => watching.unsubscribe();
  }, [form]);
  useEffect(() => {
    const sendNow = () => {
      if (state.kind === "unreachable") saveNow();
    };
    addEventListener("online", sendNow);
    return () => removeEventListener("online", sendNow);
  }, [saveNow, state.kind]);
  const goTo = (next: number) => {
    setIndex(next);
    history.replaceState(history.state, "", `#location-${next + 1}`);
    requestAnimationFrame(() => document.getElementById("this-location")?.focus());
  };
  const addLocation = () => {
    const locations = form.getValues("locations");
    const id = freshId(
      "location",
      locations.map((each) => each.id),
    );
    const label = `Spot ${locations.length + 1}`;
    form.setValue("locations", [...locations, { id, label, x: "", y: "", drops: ["", "", ""], note: "" }]);
    goTo(locations.length);
  };
  const shown = Math.min(index, Math.max(0, count - 1));
  return (
    <FormProvider {...form}>
      <form
        aria-label="Drops on the field"
        aria-describedby={statusId}
        noValidate
        className={styles.form}
        onSubmit={(event) => {
          event.preventDefault();
          if (shown < count - 1) goTo(shown + 1);
          else saveNow();
        }}
      >
        {state.kind === "conflict" ? (
          <ConflictNotice conflict={state} mine={form.getValues()} keepMine={keepMine} openTheirs={openTheirs} />
        ) : null}
        {begun.olderDraft === null ? null : (
          <DraftNotice where={where} draft={begun.olderDraft} stored={values} bringBack={replaceAll} />
        )}
        <DeviceStatus id={statusId} state={state} opened={opened} />
        {count === 0 ? (
          <p>No location is entered yet. Add one here, or those of the plan on the page of the campaign.</p>
        ) : (
          <LocationEntry key={shown} index={shown} />
        )}
        <LocationSteps index={shown} count={count} goTo={goTo} addLocation={addLocation} />
      </form>
    </FormProvider>
  );
}
