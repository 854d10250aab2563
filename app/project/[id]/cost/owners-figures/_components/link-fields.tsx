"use client";
import { useFormContext, useWatch } from "react-hook-form";
import { linkIds, technicalLinks } from "#lib/cost";
import type { Choice } from "../../../../../_components/form/choice-field";
import { KindField } from "../../../../../_components/form/kind-field";
import { TextField } from "../../../../../_components/form/text-field";
import { PlainPriceFields, startingPrice } from "../../../_components/price/plain-price-fields";
import { linkInWords } from "./link-words";
import styles from "./owners-figures.module.css";
import type { OwnersValues } from "./owners-values";
import { parameterWords } from "./parameter-words";

/** A bid to set links for, and what each link does in it now, in a sentence by the id of the link. */
export type LinkedBid = Readonly<{ id: string; letter: string; now: Readonly<Record<string, string>> }>;

const ways: readonly Choice[] = [
  { value: "off", label: "Left off" },
  { value: "computed", label: "Worked out" },
  { value: "stated", label: "A figure of the owner’s own" },
];
type Way = "off" | "computed" | "stated";
const templates = { off: {}, computed: {}, stated: { price: startingPrice } };

/** Every technical link: the figures that it works with, and how it is set for each bid. */
export function LinkFields({ bids }: { bids: readonly LinkedBid[] }) {
  return linkIds.map((link, row) => {
    const { label, does, parameters } = technicalLinks[link];
    return (
      <details key={link} className={styles.link}>
        <LinkSummary label={label} first={row * bids.length} bids={bids} />
        <fieldset className={styles.fields}>
          <legend className="visually-hidden">{label}</legend>
          <p className={styles.note}>{does}</p>
          <div className={styles.group}>
            {parameters.map((parameter) => {
              const { dimension, ...words } = parameterWords[parameter];
              return (
                <TextField
                  key={parameter}
                  name={`linkParameters.${parameter}`}
                  {...words}
                  {...(dimension === undefined ? {} : { dimension })}
                />
              );
            })}
          </div>
          <div className={styles.group}>
            {bids.map(({ id, letter, now }, column) => {
              const name = `links.${row * bids.length + column}.choice`;
              return (
                <div key={id} id={`links.${id}.${link}`}>
                  <KindField<Way>
                    name={name}
                    label={`Bid ${letter}: ${label.toLowerCase()}`}
                    choices={ways}
                    templates={templates}
                    fields={(way) =>
                      way === "stated" ? (
                        <PlainPriceFields name={`${name}.price`} what={`Figure, bid ${letter}`} />
                      ) : null
                    }
                  />
                  {now[link] ? <p className={styles.now}>{now[link]}</p> : null}
                </div>
              );
            })}
          </div>
        </fieldset>
      </details>
    );
  });
}

/** One line on a link: in which bids it is worked out, stated or left off. */
function LinkSummary({ label, first, bids }: { label: string; first: number; bids: readonly LinkedBid[] }) {
  const { control } = useFormContext<OwnersValues>();
  const links = useWatch({ control, name: "links" });
  const settings = bids.map(({ letter }, column) => ({ letter, way: links[first + column]?.choice?.kind ?? "off" }));
  return (
    <summary>
      {label}: <span className={styles.set}>{linkInWords(settings)}</span>
    </summary>
  );
}
