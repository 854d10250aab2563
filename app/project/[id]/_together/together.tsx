"use client";
import { usePathname, useRouter } from "next/navigation";
import { useEffect, useRef, useState } from "react";
import { isQuietPlace } from "#lib/together";
import { openDocuments } from "../../../_components/form/open-documents";
import { askServer, sayGoodbye } from "./ask-server";
import type { News } from "./news";
import { othersInWords } from "./others-in-words";
import styles from "./together.module.css";

const pause = 5_000; // ms between two questions; the store counts a page as open for several of them
const longPause = 30_000; // ms, where the server did not answer

const clock = (at: string) => new Date(at).toLocaleTimeString("en-US", { hour: "numeric", minute: "2-digit" });

/** An id of the open page, drawn anew whenever it is loaded. */
const drawn = (): string => [...crypto.getRandomValues(new Uint32Array(3))].map((part) => part.toString(36)).join("-");

/**
 * Who else has this page open, and whether the project has changed while it was. Where a form is open whose document
 * others saved, the page is fetched anew by itself and the form takes in what was not touched here; for the rest a page
 * stays as it is until somebody asks, as nobody wants figures to change while they read them.
 * @param entries in the record of the project, when the page was last fetched
 */
export function Together({ project, entries }: { project: string; entries: number }) {
  const router = useRouter();
  const place = usePathname().slice(`/project/${project}/`.length);
  const isWatched = place !== "" && !isQuietPlace(place);
  const [others, setOthers] = useState<News["others"]>([]);
  const [isOlder, setIsOlder] = useState(false);
  const page = useRef("");
  const fetched = useRef(entries);
  const shows = useRef<number | null>(entries); // entries that the page is known to show; null on one that was just opened

  useEffect(() => {
    fetched.current = entries;
    setIsOlder(false);
  }, [entries]);

  useEffect(() => {
    if (!isWatched) return undefined;
    if (page.current === "") page.current = drawn();
    let here = true;
    let wasBehind = false;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const ask = async () => {
      clearTimeout(timer);
      if (document.visibilityState === "hidden" || !navigator.onLine) return; // it asks again when that is over
      const open = openDocuments();
      const news = await askServer(project, {
        ...{ does: "shows", page: page.current, place },
        documents: open.map(({ kind, id }) => ({ kind, id })),
      });
      if (!here) return;
      timer = setTimeout(() => void ask(), news === null ? longPause : pause);
      setOthers(news?.others ?? []);
      if (news === null) return;
      shows.current = Math.max(shows.current ?? news.entries, fetched.current);
      const isBehind = news.entries > shows.current;
      setIsOlder(isBehind && wasBehind); // what was saved here just now is on its way
      wasBehind = isBehind;
      const told = open.map(({ kind, id, heard }) => {
        const ofThis = news.documents.find((document) => document.kind === kind && document.id === id);
        return ofThis !== undefined && heard(ofThis);
      });
      if (told.some(Boolean)) router.refresh();
    };
    const again = () => void ask();
    const leave = () => sayGoodbye(project, page.current);
    again();
    document.addEventListener("visibilitychange", again);
    addEventListener("online", again);
    addEventListener("pagehide", leave);
    return () => {
      here = false;
      clearTimeout(timer);
      setOthers([]);
      setIsOlder(false);
      shows.current = null;
      leave();
      document.removeEventListener("visibilitychange", again);
      removeEventListener("online", again);
      removeEventListener("pagehide", leave);
    };
  }, [isWatched, place, project, router]);

  return (
    <div role="status" className={`${styles.together} screen-only`} data-others={others.length}>
      {others.length === 0 ? null : <p>Also on this page: {othersInWords(others, clock)}</p>}
      {isOlder ? (
        <p>
          The project has changed since this page was opened.{" "}
          <button type="button" className="plain" onClick={() => router.refresh()}>
            Show it as it stands now
          </button>
        </p>
      ) : null}
    </div>
  );
}
