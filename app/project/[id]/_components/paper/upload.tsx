"use client";
import { useRouter } from "next/navigation";
import { useId, useRef, useState } from "react";
import { type AttachmentOwner, attachmentLimits, explainAttachment } from "#lib/attachment";
import { sendFile } from "./send-file";
import styles from "./upload.module.css";

type Sending = Readonly<{ name: string; share: number; stop: () => void }>;
type Outcome = Readonly<{ name: string; kept: boolean; sentence: string }>;

/** Sends files one after the other, tells how far each has come, and says what became of it. */
export function Upload({
  project,
  owner,
  title = "",
  label,
  hint = "shown",
}: {
  project: string;
  /** Whose papers they are. */
  owner: AttachmentOwner;
  /** What the document is called where it is named; the name of the file where empty. */
  title?: string;
  label: string;
  /** What may be sent; hidden where it stands above already. */
  hint?: "shown" | "said above";
}) {
  const id = useId();
  const router = useRouter();
  const input = useRef<HTMLInputElement>(null);
  const [sending, setSending] = useState<Sending | null>(null);
  const [outcomes, setOutcomes] = useState<readonly Outcome[]>([]);
  const sendAll = async (files: readonly File[]) => {
    setOutcomes([]);
    let stopped = false;
    for (const file of files) {
      if (stopped) break;
      const stopping = new AbortController();
      const stop = () => {
        stopped = true;
        stopping.abort();
      };
      setSending({ name: file.name, share: 0, stop });
      const outcome = await sentOutcome(file, stopping.signal, (share) => setSending({ name: file.name, share, stop }));
      setOutcomes((before) => [...before, outcome]);
    }
    setSending(null);
    if (input.current !== null) input.current.value = "";
    router.refresh();
  };
  const sentOutcome = async (file: File, cancel: AbortSignal, progress: (share: number) => void): Promise<Outcome> => {
    if (file.size > attachmentLimits.fileBytes)
      return { name: file.name, kept: false, sentence: explainAttachment({ kind: "too-large", bytes: file.size }) };
    const sent = await sendFile(file, { project, owner, title }, progress, cancel);
    switch (sent.kind) {
      case "kept": {
        const renamed = sent.name === file.name ? "" : ` as “${sent.name}”`;
        return { name: file.name, kept: true, sentence: `Kept${renamed}.` };
      }
      case "supplied":
        return { name: file.name, kept: true, sentence: "Kept: it is the file that an attachment was waiting for." };
      case "refused":
        return { name: file.name, kept: false, sentence: sent.problem };
    }
  };
  return (
    <div className={`${styles.upload} screen-only`}>
      <label htmlFor={id}>{label}</label>
      <input
        ref={input}
        id={id}
        type="file"
        multiple={title === ""}
        accept="application/pdf,image/png,image/jpeg"
        disabled={sending !== null}
        {...(hint === "shown" ? { "aria-describedby": `${id}-hint` } : {})}
        onChange={({ target }) => void sendAll([...(target.files ?? [])])}
      />
      {hint === "shown" ? (
        <p id={`${id}-hint`} className={styles.hint}>
          PDF, PNG or JPEG, up to {attachmentLimits.fileBytes / 1024 / 1024} MB each. A file is kept as it came, with
          its SHA-256 in the record.
        </p>
      ) : null}
      {sending === null ? null : (
        <p className="row">
          <label htmlFor={`${id}-progress`}>Sending “{sending.name}”</label>
          <progress id={`${id}-progress`} value={sending.share} max={1} />
          <button type="button" className="plain" onClick={sending.stop}>
            Stop
          </button>
        </p>
      )}
      <div role="status">
        <ul className={styles.outcomes}>
          {outcomes.map(({ name, kept, sentence }, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: two files may have one name, and the list only grows
            <li key={index} className={kept ? undefined : styles.problem}>
              “{name}”: {sentence}
            </li>
          ))}
        </ul>
      </div>
    </div>
  );
}
